"""The fibre engine: what an arm path does to each part that crosses the shoulder. NumPy lives here.

``geometry`` loads the numbers; ``frames``, ``girdle``, ``wrapping`` and ``strands`` turn a posture into
lengths and moment arms; ``paths`` turns library rows into postures and loads; ``scores``, ``extremes`` and
``lines`` turn those into what a coach reads; ``picture`` gives the arrays to draw. ``muscles`` holds all
other parts, ``sharing`` how they share a load, ``work`` what comes of it, ``trust`` how far to believe it.
Everything is batched: leading axes are postures (or movements x samples), then strands, then x, y, z.
"""
