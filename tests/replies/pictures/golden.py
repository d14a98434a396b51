"""Golden pictures: small copies of the drawings as they were looked at, and how far another may be from them."""

from io import BytesIO
from pathlib import Path

from PIL import Image, ImageChops, ImageStat

from bot.rendering import render_png
from bot.replies.phrases import Phrases
from bot.replies.pictures.drawing import Drawing
from tests.replies.pictures.scenes import MIXED_LINES, SCENES, mixed_lines

FOLDER = Path(__file__).parent / "golden"
COLOURS = 128
IN_EVERY_SCRIPT = ("plate-card", "trend", "week-close")
OTHER_SCRIPTS = ("bn",)

LINES = "lines"
"""Lines of a script with Latin letters and clocks among them, whatever the catalogue says."""

GOLDEN = (
    *((scene, "en") for scene in SCENES),
    *((scene, language) for language in OTHER_SCRIPTS for scene in IN_EVERY_SCRIPT),
    *((LINES, language) for language in MIXED_LINES),
)


def path_of(scene: str, language: str) -> Path:
    """Where a golden picture is kept."""
    return FOLDER / f"{scene}.{language}.png"


def drawn(scene: str, language: str) -> Drawing:
    """The drawing as it is drawn now."""
    return mixed_lines(language) if scene == LINES else SCENES[scene](Phrases(language))


def picture_of(drawing: Drawing) -> Image.Image:
    """The drawing rendered as wide as it was drawn."""
    return Image.open(BytesIO(render_png(drawing.svg, drawing.width))).convert("RGB")


def kept(scene: str, language: str) -> Image.Image:
    """The picture as it was looked at."""
    return Image.open(path_of(scene, language)).convert("RGB")


def apart(one: Image.Image, other: Image.Image) -> float:
    """How far two pictures of one size lie apart, in grey levels a pixel on average; 255 where their sizes differ."""
    if one.size != other.size:
        return 255.0
    return ImageStat.Stat(ImageChops.difference(one, other).convert("L")).mean[0]


def keep(scene: str, language: str) -> None:
    """Keep the picture as it is drawn now, in few colours so that it stays small."""
    picture_of(drawn(scene, language)).quantize(COLOURS, kmeans=1).save(path_of(scene, language), optimize=True)
