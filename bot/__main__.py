"""The command line: run, check, demo, rehearse. Faults at the start end with one sentence and a code of their own."""

import argparse
import asyncio
import contextlib
import gc
import signal
import sys
from collections.abc import Coroutine, Iterator
from pathlib import Path
from typing import Any

from bot.errors import OperatorError
from bot.logs import begin_log


def main() -> None:
    """Run the command; exit with 0, or with the code of the fault (those of sysexits.h) after saying it."""
    options = _parser().parse_args()
    try:
        options.command(options)
    except OperatorError as fault:
        sys.stderr.write(f"platepace: {fault}\n")
        sys.exit(fault.exit_code)
    except KeyboardInterrupt:
        sys.exit(128 + signal.SIGINT)


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(prog="platepace", description="Weekly plating practice in a kitchen's own room.")
    commands = parser.add_subparsers(required=True, metavar="COMMAND")
    run = commands.add_parser("run", help="work in the rooms of a homeserver")
    run.add_argument("--config", type=Path, default=Path("config.toml"), help="the settings file (config.toml)")
    run.set_defaults(command=_run)
    looked = commands.add_parser("check", help="look at all that a start needs, and change nothing")
    looked.add_argument("--config", type=Path, default=Path("config.toml"), help="the settings file (config.toml)")
    looked.set_defaults(command=_check)
    demo = commands.add_parser("demo", help="play a week on a private homeserver of its own")
    demo.set_defaults(command=_demo)
    rehearse = commands.add_parser("rehearse", help="play a scripted chat with no server and print the replies")
    rehearse.add_argument("file", type=Path, help="JSON lines: time, sender, room, text, edits, deletions, reactions")
    rehearse.add_argument("--json", action="store_true", help="print one JSON object a reply, with its numbers")
    rehearse.set_defaults(command=_rehearse)
    return parser


def _run(options: argparse.Namespace) -> None:
    with _loading():
        from bot.settings import load_secrets, load_settings  # noqa: PLC0415 - each command loads what it needs alone

    settings = load_settings(options.config)
    secrets = load_secrets(settings)
    begin_log(settings.admin.log_level)
    with _loading():
        from bot.app import run_bot  # noqa: PLC0415 - as above

    asyncio.run(_until_told_to_stop(run_bot(settings, secrets)))


def _check(options: argparse.Namespace) -> None:
    from bot.checking import check  # noqa: PLC0415 - each command loads what it needs alone
    from bot.settings import load_secrets, load_settings  # noqa: PLC0415 - as above

    settings = load_settings(options.config)
    secrets = load_secrets(settings)
    begin_log("WARNING")
    sys.exit(asyncio.run(check(settings, secrets, lambda line: print(line, flush=True))))  # noqa: T201 - its output


@contextlib.contextmanager
def _loading() -> Iterator[None]:
    """Load modules without looking for garbage among them, now or ever: they stay, and it is a fifth of the start."""
    gc.disable()
    try:
        yield
    finally:
        gc.freeze()
        gc.enable()


def _demo(_: argparse.Namespace) -> None:
    from bot.demo import demo  # noqa: PLC0415 - as above

    asyncio.run(_until_told_to_stop(demo(interactive=sys.stdin.isatty() and sys.stdout.isatty())))


def _rehearse(options: argparse.Namespace) -> None:
    from bot.rehearse import rehearse  # noqa: PLC0415 - as above

    rehearse(options.file, as_json=options.json, write=lambda line: print(line, flush=True))  # noqa: T201 - its output


async def _until_told_to_stop(work: Coroutine[Any, Any, None]) -> None:
    """Work until it fails, or until the process is asked to end, which cancels it once and in good order."""
    task = asyncio.ensure_future(work)
    loop = asyncio.get_running_loop()
    for number in (signal.SIGTERM, signal.SIGINT):
        loop.add_signal_handler(number, lambda: task.cancelling() or task.cancel())
    with contextlib.suppress(asyncio.CancelledError):
        try:
            await task
        except BaseExceptionGroup as several:
            told = several.subgroup(OperatorError)
            if told is None:
                raise
            raise _first_of(told) from several


def _first_of(group: BaseExceptionGroup[OperatorError]) -> OperatorError:
    """The first of the faults, however deep in the group."""
    fault = group.exceptions[0]
    return _first_of(fault) if isinstance(fault, BaseExceptionGroup) else fault


if __name__ == "__main__":
    main()
