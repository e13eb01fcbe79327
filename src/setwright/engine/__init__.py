"""The fibre engine: what an arm path does to each part of pectoralis major. NumPy lives here.

``geometry`` loads the numbers; ``frames``, ``girdle``, ``wrapping`` and ``strands`` turn a posture into
lengths and moment arms; ``paths`` turns library rows into postures and loads; ``scores``, ``extremes`` and
``lines`` turn those into what a coach reads; ``picture`` gives the arrays to draw. Everything is batched:
the leading axes of an array are postures (or movements x samples), then strands, then x, y, z.
"""
