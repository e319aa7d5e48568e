#!/usr/bin/env python3
"""Boxes made of half-spaces: the inner faces, each moved outwards by its board.

"""
import numpy as np
import scipy
from scipy.spatial import ConvexHull, HalfspaceIntersection

from tables import printer

emit = printer("scipy-box-panels.csv")

# width, height, depth at the bottom, depth at the top (inside, mm), board, front
BOXES = [
    (500, 300, 250, 250, 18, 18),
    (564, 324, 330, 150, 18, 18),
    (620, 340, 300, 210, 15, 30),
    (300, 300, 300, 299, 19, 19),
    (900, 250, 420, 60, 12, 24),
]


def solid(w, h, d, top, board, front):
    """Corners of the body whose faces lie that far outside the inner ones."""
    slope = np.array([0, 1, (d - top) / h])
    length = np.linalg.norm(slope)
    planes = np.array([
        [-1, 0, 0, -board], [1, 0, 0, -w - board],
        [0, 0, -1, -board], [0, 0, 1, -h - board],
        [0, -1, 0, -front],
        [*(slope / length), -d / length - board],
    ])
    middle = np.array([w / 2, min(d, top) / 2, h / 2])
    return HalfspaceIntersection(planes, middle).intersections


def at(corners, height):
    level = corners[np.abs(corners[:, 2] - height) < 1e-6]
    return np.ptp(level[:, 1])


emit(f"""# title: Outer size and volumes of rectangular and wedge boxes of board
# kind: computed
# source: SciPy {scipy.__version__}, scipy.spatial.HalfspaceIntersection for the corners and ConvexHull for the volumes
# edition: script scipy/box_panels.py: inner faces as planes, each moved outwards along its normal by the board's thickness
# typed: not typed
# confirmed: first row by hand: 500*300*250 mm = 37.5 l, 536*336*286 mm = 51.507 l
width_mm,height_mm,depth_mm,top_depth_mm,board_mm,front_board_mm,inside_l,outside_l,outside_depth_mm,outside_top_depth_mm""")
for box in BOXES:
    inner = solid(*box[:4], 0, 0)
    outer = solid(*box)
    row = [ConvexHull(inner).volume / 1e6, ConvexHull(outer).volume / 1e6,
           at(outer, outer[:, 2].min()), at(outer, outer[:, 2].max())]
    emit(",".join([str(v) for v in box] + [f"{v:.10g}" for v in row]))
