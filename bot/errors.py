"""The two kinds of failure that the bot expects."""

BAD_SETTINGS = 78
NO_HOMESERVER = 69
NOT_SIGNED_IN = 77
NO_DATABASE = 74
BAD_SCRIPT = 65
"""Exit codes, those of sysexits.h: EX_CONFIG, EX_UNAVAILABLE, EX_NOPERM, EX_IOERR, EX_DATAERR."""


class UserError(Exception):
    """Something a person can mend; it is itself the reply.

    ``key`` names the sentence in the language catalogues and ``values`` fill its places, so that the same error
    reads in every language. Values are plain strings and numbers.
    """

    def __init__(self, key: str, **values: str | int | float) -> None:
        super().__init__(key, values)
        self.key = key
        self.values = values


class OperatorError(Exception):
    """A fault that only whoever runs the bot can mend: logged and told to the admin room, never to the cooks.

    At the start it ends the process with ``exit_code``.
    """

    def __init__(self, told: str, exit_code: int = BAD_SETTINGS) -> None:
        super().__init__(told)
        self.exit_code = exit_code
