"""Reads every page of every edition with poppler, and fails where a word is missing, changed or out of its order.

    DEPTHPRESS_WORDS=DIR cargo test --test main -- --ignored write_words_of_the_demo_sets
    python tests/outside/words_check.py DIR/words-SET.json OUT/SET

The file holds what each sheet prints, run by run; OUT/SET is the folder of the set with the folders of its editions. Both sides are
compared letter by letter without blanks, since where a line or a cell ends is no word of the page.
"""

import json
import subprocess
import sys
import unicodedata
from pathlib import Path

SOFT_HYPHEN = "\u00ad"


def letters(text):
    """The text without blanks and form feeds; the two code points of one glyph are the same letter."""
    text = unicodedata.normalize("NFC", text).replace("\u00b5", "\u03bc").replace("\u2206", "\u0394")
    return "".join(text.replace(SOFT_HYPHEN, "-").split())


def main():
    expected = json.loads(Path(sys.argv[1]).read_text())
    folder = Path(sys.argv[2])
    wrong, pages, count = [], 0, 0
    for edition, sheets in expected.items():
        book = next(path for path in (folder / edition).glob("*.pdf") if "answers" not in path.name)
        said = subprocess.run(["pdftotext", "-raw", "-enc", "UTF-8", str(book), "-"], capture_output=True, check=True)
        read = said.stdout.decode().split("\f")[:-1]
        if len(read) != len(sheets):
            wrong.append(f"{edition}: {len(read)} pages, expected {len(sheets)}")
            continue
        for number, (sheet, page) in enumerate(zip(sheets, read), 1):
            want, got = letters("".join(sheet)), letters(page)
            pages, count = pages + 1, count + len(want)
            if want != got:
                at = next((i for i, (a, b) in enumerate(zip(want, got)) if a != b), min(len(want), len(got)))
                wrong.append(f"{edition} page {number}: expected `{want[at:at + 40]}`, read `{got[at:at + 40]}`")
    print(f"{len(expected)} editions, {pages} pages, {count} letters; {len(wrong)} pages differ")
    print("\n".join(wrong[:20]))
    # A check that reads nothing proves nothing.
    return 1 if wrong or count < 10000 else 0


sys.exit(main())
