"""Works the colour cases of `tests/colour/cases.rs` out again with colour-science, and fails where we differ.

    DEPTHPRESS_COLOUR_CASES=DIR cargo test --test main -- --ignored write_colour_cases
    python tests/outside/colour_check.py DIR/colour-cases.json

Needs the versions of colour-requirements.txt. Spectra of displays, lamps and the observer come from colour-science, not
from our files; reflectances of inks are reconstructed by its own Meng et al 2015.
"""

import json
import sys
import warnings
from pathlib import Path

warnings.filterwarnings("ignore")

import colour  # noqa: E402
import numpy as np  # noqa: E402

# Agreement asked of light, contrast and ghost: a share of the value.
TOLERANCE = 0.002
# Below this share of white, agreement is asked in absolute terms.
FLOOR = 1e-4
# The two reconstructions of an ink minimise the same slopes on different grids: a share of the paper.
INK_TOLERANCE = 0.005

SHAPE = colour.SpectralShape(380, 780, 1)
NM = SHAPE.wavelengths
V = colour.MSDS_CMFS["CIE 1931 2 Degree Standard Observer"].copy().align(SHAPE).values[:, 1]

IDEAL = {
    "red": NM >= 600,
    "cyan": NM < 600,
    "green": (NM >= 500) & (NM < 600),
    "blue": NM < 500,
    "magenta": (NM < 500) | (NM >= 600),
    "amber": NM >= 500,
}
LAMPS = {"a": "A", "c": "C", "d50": "D50", "d65": "D65", "led": "LED-B3"}


def table(name):
    path = Path(__file__).parent.parent / "data" / name
    lines = [line for line in path.read_text().splitlines() if not line.startswith("#")]
    return [line.split(",") for line in lines[1:]]


def straight(rows):
    data = dict((float(nm), float(value)) for nm, value in rows)
    spectrum = colour.SpectralDistribution(data, interpolator=colour.LinearInterpolator)
    return spectrum.align(SHAPE, interpolator=colour.LinearInterpolator).values


def smooth(rows):
    spectrum = colour.SpectralDistribution(dict((nm, value) for nm, value in rows))
    return np.maximum(spectrum.align(SHAPE, interpolator=colour.SpragueInterpolator).values, 0)


def transmittance(filter_):
    if "ideal" in filter_:
        return IDEAL[filter_["ideal"]].astype(float)
    if "gelatin" in filter_:
        return straight((row[0], float(row[filter_["gelatin"]]) / 100) for row in table("filters.csv"))
    return straight(filter_["rows"])


def primaries(screen):
    if "named" in screen:
        spectra = colour.MSDS_DISPLAY_PRIMARIES[screen["named"]].copy()
        return np.maximum(spectra.align(SHAPE, interpolator=colour.SpragueInterpolator).values, 0)
    return np.stack([smooth(rows) for rows in screen["primaries"]], axis=1)


def light(hex_):
    code = np.array([int(hex_[i : i + 2], 16) for i in (1, 3, 5)]) / 255
    return colour.models.eotf_sRGB(code)


def screen_case(case):
    spectra = primaries(case["screen"])
    white = (spectra.sum(axis=1) * V).sum()
    left, right, ground = [spectra @ light(ink) for ink in case["inks"]]
    expected = []
    for filter_, own, other in ((case["left"], left, right), (case["right"], right, left)):
        t = transmittance(filter_) * V
        own, other, empty = ((s * t).sum() / white for s in (own, other, ground))
        step = abs(own - empty)
        contrast = step / max(own, empty) if max(own, empty) > 0 else 0.0
        ghost = abs(other - empty) / step if step > 0 else None
        expected.append((own, other, empty, contrast, ghost))
    return expected


def off(ours, theirs):
    return abs(ours - theirs) / max(abs(theirs), FLOOR)


def check_screens(cases):
    worst = 0.0
    for number, case in enumerate(cases):
        for eye, expected in zip(case["eyes"], screen_case(case)):
            for ours, theirs in zip(eye, expected):
                # A ghost beyond a thousand times the own mark is a mark that does not show.
                if theirs is None or theirs > 1000:
                    continue
                worst = max(worst, off(ours, theirs))
                if off(ours, theirs) > TOLERANCE:
                    sys.exit(f"case {number}: ours {ours}, colour-science {theirs}\n{json.dumps(case)}")
    return worst


def reflectances():
    """Paper and full inks of the measured table, by name, on the grid."""
    cmfs = colour.MSDS_CMFS["CIE 1931 2 Degree Standard Observer"].copy().align(colour.SpectralShape(380, 780, 5))
    d50 = colour.SDS_ILLUMINANTS["D50"].copy().align(cmfs.shape)
    names = {"0000": "paper", "1000": "c", "0100": "m", "0010": "y", "0110": "my", "1010": "cy", "0001": "k"}
    found = {}
    for row in table("fogra39l.csv"):
        name = names.get("".join("1" if cell == "100" else cell for cell in row[:4]))
        if name and name not in found:
            xyz = np.array([float(cell) for cell in row[4:7]]) / 100
            sd = colour.XYZ_to_sd(xyz, method="Meng 2015", cmfs=cmfs, illuminant=d50)
            found[name] = sd.align(SHAPE, interpolator=colour.LinearInterpolator).values
    return found


def check_prints(cases):
    inks, worst = reflectances(), 0.0
    for case in cases:
        lamp = colour.SDS_ILLUMINANTS[LAMPS[case["lamp"]]].copy().align(SHAPE).values
        weights = lamp * IDEAL[case["filter"]] * V
        theirs = (inks[case["ink"]] * weights).sum() / (inks["paper"] * weights).sum()
        worst = max(worst, abs(case["seen"] - theirs))
        if abs(case["seen"] - theirs) > INK_TOLERANCE:
            sys.exit(f"{case}: colour-science {theirs}")
    return worst


def main():
    cases = json.loads(Path(sys.argv[1]).read_text())
    screens, prints = cases["screens"], cases["prints"]
    if len(screens) < 200 or not prints:
        sys.exit(f"too few cases: {len(screens)} screens, {len(prints)} prints")
    of_screens, of_prints = check_screens(screens), check_prints(prints)
    print(f"colour: {len(screens)} screen cases, worst {of_screens:.2e} of {TOLERANCE} relative;")
    print(f"        {len(prints)} print cases, worst {of_prints:.4f} of {INK_TOLERANCE} of the paper")


main()
