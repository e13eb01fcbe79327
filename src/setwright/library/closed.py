"""The closed lists of the movement library: the only words a row may use for each of these fields."""

from typing import Literal

Pattern = Literal[
    "horizontal push", "vertical push", "downward push", "fly", "raise", "rear raise",
    "horizontal pull", "vertical pull", "shoulder extension",
    "squat", "lunge", "knee extension", "knee flexion", "hinge", "calf raise",
    "hip abduction", "hip adduction",
    "explosive lift", "jump", "throw",
    "trunk brace", "trunk flexion", "trunk rotation", "locomotion", "carry",
    "elbow flexion", "elbow extension", "wrist", "scapular", "cuff", "neck",
]  # fmt: skip

Implement = Literal[
    "barbell", "guided bar", "trap bar", "bar in a floor pivot",
    "barbell or dumbbell", "barbell or dumbbells",
    "dumbbell", "dumbbells", "dumbbells or none", "dumbbell or barbell", "dumbbell or kettlebell",
    "dumbbell or cable", "dumbbells, kettlebells or handles", "kettlebell", "kettlebells or sandbag",
    "machine", "machine, bar or bodyweight", "assistance machine or band",
    "cable", "cable or band", "cable or dumbbell", "band", "band or cable",
    "bodyweight", "suspension straps", "rings", "medicine ball", "plate or ball", "wheel or bar",
    "sled", "sled or hose", "hand, band or partner", "harness or machine",
    "rowing ergometer", "ski ergometer", "bike", "rope", "heavy rope", "none",
]  # fmt: skip

Muscle = Literal[
    "pectoralis major", "pectoralis major costal part", "pectoralis minor", "coracobrachialis",
    "serratus anterior",
    "deltoid", "anterior deltoid", "middle deltoid", "posterior deltoid",
    "rotator cuff", "supraspinatus", "infraspinatus", "teres minor", "subscapularis",
    "upper back", "upper trapezius", "middle trapezius", "lower trapezius", "rhomboids", "levator scapulae",
    "latissimus dorsi", "teres major",
    "triceps brachii", "triceps brachii long head", "anconeus",
    "biceps brachii", "biceps brachii short head", "brachialis", "brachioradialis",
    "forearm flexors", "forearm extensors",
    "neck flexors", "neck extensors", "lateral neck flexors",
    "rectus abdominis", "obliques", "transversus abdominis", "quadratus lumborum",
    "erector spinae", "multifidus",
    "hip flexors", "tensor fasciae latae", "gluteus maximus", "gluteus medius", "gluteus minimus",
    "adductors", "adductor magnus", "quadriceps", "hamstrings", "gastrocnemius", "soleus",
]  # fmt: skip

Banned = Literal[
    "overhead", "bar grip", "chest on a bench", "hanging", "hands on the floor", "jumping", "kneeling",
]  # fmt: skip

Hands = Literal["fixed apart", "fixed together", "free"]
Sides = Literal["both", "one", "alternating"]
LoadClass = Literal["heavy", "moderate", "light"]
LoadKind = Literal["external", "stack", "band", "bodyweight", "assisted", "time or distance"]
ScoredBy = Literal["engine", "tags"]
ForceKind = Literal[
    "gravity",
    "support vertical",
    "support square",
    "toward point",
    "against path",
    "toward other hand",
    "pivoting bar",
]
