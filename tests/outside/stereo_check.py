"""Fields of random dots as a stereo matcher of others sees them: OpenCV finds the depth that the report tells from both
eyes' pictures, and nothing finds the figure in one eye's picture alone.

    stereo_check.py EDITION_FOLDER

reads report.json and the PNG pages of one edition for cyan before the left eye and red before the right, on white: the
left eye sees the green channel, the right eye the red one.

Depth: semi-global matching (H. Hirschmueller, "Stereo processing by semiglobal matching and mutual information", IEEE
PAMI 30, 2008, as OpenCV has it), held against `points`. One eye alone: maps of density, of edges and of likeness to what
stands a few dots beside are compared between the cells of a figure, or of its border, and all others, by the test of
B. L. Welch (Biometrika 34, 1947): cells of 4 mm are several dots wide and know nothing of each other. A field with a
planted fault must be found out by the same search.
"""

import json
import pathlib
import sys

import cv2
import numpy as np

INCH = 25.4
# The share of points that a match must place within one pixel by median, and how well it must find a figure.
MEDIAN_PX = 1.0
LEAST_IOU = 0.9
# Standard errors. A page has up to 2 eyes, 8 maps and 12 sets of cells: chance passes 5 in one of 10 000 pages.
CHANCE = 5.0
# Kept away from what stands on a field, mm.
CLEAR = 2.0


class Page:
    """The pictures of both eyes of one page, and what the report tells of its field."""

    def __init__(self, folder, ppi, page):
        image = cv2.imread(str(folder / page["png"]))
        self.scale = ppi / INCH
        self.left, self.right = 255 - image[:, :, 1], 255 - image[:, :, 2]
        self.id, self.kind = page["id"], page["kind"]
        self.field = next(t for t in page["targets"] if t["role"] == "field")
        self.figures = [t for t in page["targets"] if t["role"] == "figure"]
        self.marks = page["marks"]
        self.cued = any(self.within(guide) for guide in page["guides"])
        points = np.array(self.field["points"])
        self.columns = len(np.unique(np.round(points[:, 0], 3)))
        self.points = points
        self.clear = self.clear_points()

    def within(self, mark):
        """Whether a mark touches the field."""
        (x, y), (w, h) = mark["at_mm"], mark["size_mm"]
        (fx, fy), (fw, fh) = self.field["at_mm"], self.field["size_mm"]
        return abs(x - fx) < (fw + w) / 2 - 4 and abs(y - fy) < (fh + h) / 2 - 4

    def clear_points(self):
        """The points that no mark stands near."""
        clear = np.ones(len(self.points), bool)
        for mark in self.marks:
            (x, y), (w, h) = mark["at_mm"], mark["size_mm"]
            if w > 0.8 * self.field["size_mm"][0]:
                continue  # A border around the field.
            reach = abs(mark["parallax_mm"]) / 2 + CLEAR
            near_x = np.abs(self.points[:, 0] - x) < w / 2 + reach
            clear &= ~(near_x & (np.abs(self.points[:, 1] - y) < h / 2 + CLEAR))
        return clear

    def pixels(self, x_mm, y_mm):
        """The pixels that hold these places."""
        return (y_mm * self.scale).astype(int), (x_mm * self.scale).astype(int)

    def figure_points(self):
        """The points of the figures, where these stand before or behind a flat ground; else None."""
        if not self.figures or "farthest" in self.field:
            return None
        return np.abs(self.points[:, 2] - self.field["parallax_mm"]) > 1e-3


def parallax_map(page):
    """The parallax that OpenCV finds for each pixel of the left picture, in pixels; NaN where it finds none."""
    parallax = page.points[:, 2] * page.scale
    reach = int(np.ceil(np.abs(parallax).max())) + 6
    count = -(-2 * reach // 16) * 16
    block = 13
    matcher = cv2.StereoSGBM_create(
        minDisparity=-reach, numDisparities=count, blockSize=block, P1=8 * block * block, P2=32 * block * block,
        uniquenessRatio=2, mode=cv2.STEREO_SGBM_MODE_HH)
    # OpenCV counts left minus right, and the report right minus left.
    found = -matcher.compute(page.left, page.right).astype(float) / 16
    found[found > reach + 0.5] = np.nan
    return found


def depth(page):
    """The median error in pixels, and the overlap of the figure found with the one that is there."""
    x, y, p = page.points.T
    rows, columns = page.pixels(x - p / 2, y)
    found = parallax_map(page)[rows, columns]
    known = page.clear & ~np.isnan(found)
    share = known.sum() / page.clear.sum()
    error = np.abs(found - p * page.scale)[known]
    figure = page.figure_points()
    if figure is None:
        return np.median(error), share, None
    ground = page.field["parallax_mm"] * page.scale
    depths = np.array([f["parallax_mm"] for f in page.figures]) * page.scale
    nearest = np.abs(found[:, None] - depths[None, :]).min(axis=1)
    seen = nearest < np.abs(found - ground)
    both, either = (seen & figure)[known].sum(), (seen | figure)[known].sum()
    return np.median(error), share, both / either


def maps(picture, page):
    """What one eye could find a figure by: each a picture that is high or low where something is different."""
    ink = picture.astype(float) / 255
    dot = page.field["dots"]["dot_mm"] * page.scale
    yield "density", ink
    for name, dx, dy in (("edges across", 1, 0), ("edges down", 0, 1)):
        yield name, np.abs(cv2.Sobel(ink, cv2.CV_64F, dx, dy))
    steps = {abs(f["parallax_mm"] - page.field["parallax_mm"]) for f in page.figures}
    lags = {round(dot), round(2 * dot)} | {round(s * k * page.scale) for s in steps for k in (0.5, 1)}
    for lag in sorted(lags - {0}):
        yield f"likeness {lag} px beside", np.abs(ink - np.roll(ink, lag, axis=1))


def cells(page):
    """The cells of each figure, and those of its border: sets of points."""
    near = page.points[:, 2]
    for parallax in {f["parallax_mm"] for f in page.figures}:
        inside = (np.abs(near - parallax) < 1e-3).reshape(-1, page.columns)
        kernel = np.ones((3, 3), np.uint8)
        border = cv2.dilate(inside.astype(np.uint8), kernel) - cv2.erode(inside.astype(np.uint8), kernel)
        yield f"figure at {parallax} mm", inside.ravel()
        yield f"border at {parallax} mm", border.ravel().astype(bool)


def welch(a, b):
    """The difference of two means in standard errors."""
    return abs(a.mean() - b.mean()) / np.sqrt(a.var(ddof=1) / len(a) + b.var(ddof=1) / len(b))


def one_eyed(page, picture):
    """The most telling map of one eye's picture, and by how many standard errors it tells a figure."""
    rows, columns = page.pixels(page.points[:, 0], page.points[:, 1])
    step = int(np.diff(np.unique(page.points[:, 0])).min() * page.scale)
    told = []
    for name, values in maps(picture, page):
        sampled = cv2.blur(values, (step, step))[rows, columns]
        for where, inside in cells(page):
            told.append((welch(sampled[inside & page.clear], sampled[~inside & page.clear]), f"{name}, {where}"))
    return max(told)


def planted(page, rng):
    """The left picture with two dots a cell of one figure left out: a fault that one eye can find."""
    picture = page.left.copy()
    step = page.field["dots"]["dot_mm"] * page.scale
    side = 4 * page.scale
    of_one = np.abs(page.points[:, 2] - page.figures[0]["parallax_mm"]) < 1e-3
    for (x, y, p), inside in zip(page.points, of_one):
        row, column = int(y * page.scale), int((x - p / 2) * page.scale)
        for _ in range(2 if inside else 0):
            dy, dx = (rng.random(2) - 0.5) * side
            top, start = int(row + dy - step / 2), int(column + dx - step)
            picture[top:top + int(step), start:start + int(2 * step)] = 0
    return picture


def main(folder):
    report = json.loads((folder / "report.json").read_text())
    ppi, failed, kinds = report["edition"]["ppi"], [], set()
    assert report["edition"]["glasses"] == {"left": "cyan", "right": "red"} and report["edition"]["ground"] == "white"
    searched = 0
    for told in report["pages"]:
        if not any(t["role"] == "field" for t in told["targets"]):
            continue
        page = Page(folder, ppi, told)
        kinds.add(page.kind)
        median, share, iou = depth(page)
        line = f"{page.id} ({page.kind}): median error {median:.2f} px of {share:.0%} of the points"
        if MEDIAN_PX <= median or share < 0.8:
            failed.append(page.id)
        if iou is not None:
            line += f", figure found {iou:.3f}"
            # A cue stands on the border of its figure and takes the dots there.
            if iou < LEAST_IOU and not page.cued:
                failed.append(page.id)
        if iou is not None and not page.cued:
            searched += 1
            for eye, picture in (("left", page.left), ("right", page.right)):
                z, name = one_eyed(page, picture)
                line += f"; {eye} alone {z:.1f} ({name})"
                if CHANCE <= z:
                    failed.append(f"{page.id} {eye}")
            z, name = one_eyed(page, planted(page, np.random.default_rng(7)))
            line += f"; planted {z:.1f} ({name})"
            if z < CHANCE:
                failed.append(f"{page.id}: the planted fault was not found")
        print(line)
    if len(kinds) < 6 or searched < 2:
        failed.append(f"{len(kinds)} kinds, {searched} searched with one eye: too few")
    print("failed:" if failed else "all found", *failed)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main(pathlib.Path(sys.argv[1])))
