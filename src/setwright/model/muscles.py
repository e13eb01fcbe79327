"""The muscle groups that ``focus`` and ``sets a week`` may name."""

from collections.abc import Mapping
from typing import Final

GROUP_WORDS: Final[Mapping[str, str]] = {
    **{
        group: group
        for group in (
            "chest", "back", "front deltoid", "side deltoid", "rear deltoid", "elbow flexors", "triceps",
            "quadriceps", "hamstrings", "glutes", "calves",
        )
    },
    "pecs": "chest", "pectorals": "chest", "pectoralis major": "chest", "lats": "back", "upper back": "back",
    "front delts": "front deltoid", "side delts": "side deltoid", "rear delts": "rear deltoid",
    "biceps": "elbow flexors", "arms": "elbow flexors", "quads": "quadriceps", "legs": "quadriceps",
    "hams": "hamstrings", "gluteals": "glutes", "glute": "glutes", "calf": "calves",
}  # fmt: skip
"""Each word, in lower case, with the group it names (common practice, no source)."""
