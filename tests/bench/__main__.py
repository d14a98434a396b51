"""``make bench``: prints ratios measured in one run, interleaved; it asserts nothing."""

import asyncio
import tempfile
from pathlib import Path

from tests.bench import answers


def main() -> None:
    """Measure and print."""
    with tempfile.TemporaryDirectory() as directory:
        for line in asyncio.run(answers.measure(Path(directory))):
            print(line, flush=True)


if __name__ == "__main__":
    main()
