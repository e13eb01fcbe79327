"""A plan as frozen, typed models; every one knows the place it was typed at.

``plan`` holds a week with its sessions, made of ``lines``, some of them ``reused``; ``people`` the squad;
``room`` the gym.
``muscles`` names the muscle groups of ``focus`` and ``sets a week``.
``reader`` makes the models from the text of a plan and of the files beside it.
"""
