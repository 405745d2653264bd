"""Joins what a sheet needs of several Noto fonts into one regular and one bold face. Called by tools/fonts/make."""
import io
import sys

from fontTools import merge, subset
from fontTools.ttLib import TTFont

# The order decides: a sign is taken from the first font that has it.
SIGNS = [
    ("NotoSansSymbols", "⎓⏦⎍⏚"),
    ("NotoSansMath", "≤≥≠≈→←↑↓↔−√∑∞∿⊙⦿△∠∥"),
    ("NotoSansSymbols2", "■□●○✓✔✖✗☐☑⚠◉"),
]

# No letter joins or moves in these scripts, so a face needs no rules of layout for them: ASCII to Cyrillic, what Vietnamese and
# polytonic Greek add, punctuation, currency and letter-like signs.
RANGES = [
    (0x20, 0x7E), (0xA0, 0x24F), (0x250, 0x2AF), (0x2B0, 0x36F), (0x370, 0x3FF), (0x400, 0x52F), (0x1E00, 0x1EFF), (0x1F00, 0x1FFF),
    (0x2010, 0x2027), (0x2030, 0x205E), (0x2070, 0x209C), (0x20A0, 0x20BF), (0x2100, 0x214F), (0x2150, 0x218B), (0x2C60, 0x2C7F),
    (0xA640, 0xA69F), (0xA720, 0xA7FF), (0xFB00, 0xFB06), (0xFFFD, 0xFFFD),
]


def cut(path, unicodes):
    options = subset.Options()
    options.layout_features = []
    options.hinting = False
    options.name_IDs = [1, 2, 3, 4, 5, 6]
    options.notdef_outline = True
    options.glyph_names = False
    options.recalc_timestamp = False
    options.drop_tables += ["GDEF", "GPOS", "GSUB", "MATH", "meta", "STAT", "gasp"]
    font = subset.load_font(path, options)
    subsetter = subset.Subsetter(options)
    subsetter.populate(unicodes=unicodes)
    subsetter.subset(font)
    buffer = io.BytesIO()
    font.save(buffer)
    buffer.seek(0)
    return buffer


def make(noto, weight, target):
    base = TTFont(f"{noto}/NotoSans-{weight}.ttf")
    have = set(base.getBestCmap())
    letters = {code for first, last in RANGES for code in range(first, last + 1)} & have
    parts = [cut(f"{noto}/NotoSans-{weight}.ttf", letters)]
    for name, signs in SIGNS:
        path = f"{noto}/{name}-Regular.ttf"
        wanted = {ord(sign) for sign in signs} - have
        found = wanted & set(TTFont(path).getBestCmap())
        if wanted - found:
            print(f"{name} lacks {''.join(chr(code) for code in sorted(wanted - found))}", file=sys.stderr)
        have |= found
        parts.append(cut(path, found))
    merged = merge.Merger().merge(parts)
    merged["head"].created = base["head"].created
    merged["head"].modified = base["head"].modified
    merged.recalcTimestamp = False
    # Widths and heights of lines are those of the letters, whatever the signs reach.
    for table in ("hhea", "OS/2"):
        for key in ("ascent", "descent", "lineGap", "sTypoAscender", "sTypoDescender", "sTypoLineGap", "usWinAscent", "usWinDescent"):
            if hasattr(base[table], key):
                setattr(merged[table], key, getattr(base[table], key))
    family = "Loadmark Sans"
    for record in list(merged["name"].names):
        text = {
            1: family, 2: weight, 3: f"{family} {weight}, from Noto", 4: f"{family} {weight}", 6: f"LoadmarkSans-{weight}",
        }.get(record.nameID)
        if text:
            record.string = text
    merged.save(f"{target}/LoadmarkSans-{weight}.ttf")
    print(f"{weight}: {len(merged.getBestCmap())} characters")


for face in ("Regular", "Bold"):
    make(sys.argv[1], face, sys.argv[2])
