"""The two kinds of failure that the bot expects."""


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
    """A fault that only whoever runs the bot can mend: logged and told to the admin room, never to the cooks."""
