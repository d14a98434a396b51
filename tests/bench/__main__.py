"""``make bench``: prints ratios measured in one run, interleaved; it asserts nothing."""

import asyncio
import tempfile
from pathlib import Path

from tests.bench import answers, fairness, honest_boards, honest_progress, own_part, rehearse


def main() -> None:
    """Measure and print."""
    with tempfile.TemporaryDirectory() as directory:
        print("\n".join(asyncio.run(answers.measure(Path(directory)))), flush=True)
        print("\n".join(asyncio.run(own_part.measure(Path(directory)))), flush=True)
    print("\n".join(rehearse.measure()), flush=True)
    print("\n".join(fairness.measure()), flush=True)
    print("\n".join(honest_progress.measure()), flush=True)
    print("\n".join(honest_boards.measure()), flush=True)


if __name__ == "__main__":
    main()
