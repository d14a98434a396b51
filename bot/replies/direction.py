"""What is written from right to left: numbers, lists and words to type keep their own order in it (Unicode, annex 9).

Rooms allow no `dir` and no `bdi`, so that characters of the text have to do it: isolates, in plain body and HTML alike.
"""

import re

FROM_LEFT, FROM_RIGHT, AS_IT_IS, END = "\u2066", "\u2067", "\u2068", "\u2069"
_MARKS = re.compile(f"[{FROM_LEFT}{FROM_RIGHT}{AS_IT_IS}{END}]")
_FILLED = rf"{AS_IT_IS}[^{FROM_LEFT}{FROM_RIGHT}{AS_IT_IS}{END}]*{END}"
_JOINED = re.compile(rf"{_FILLED}(?:[/:x×.]{_FILLED})+")
_LIST = re.compile(rf"{AS_IT_IS}([^\n{AS_IT_IS}{END}]*, [^\n{AS_IT_IS}{END}]*){END}")
_TYPED = re.compile(rf"{FROM_LEFT}?`([^`\n]+)`{END}?")


def isolated(sentence: str) -> str:
    """A sentence whose filled places are isolated, made whole.

    Places joined to one figure, such as ``8/9``, are one; a list begins on the right like the line it stands in; and
    what is to be typed stands as it is typed, with no mark inside the back-ticks that would be copied.
    """
    figures = _JOINED.sub(lambda found: FROM_LEFT + _MARKS.sub("", found[0]) + END, sentence)
    lists = _LIST.sub(rf"{FROM_RIGHT}\1{END}", figures)
    return _TYPED.sub(lambda found: f"{FROM_LEFT}`{_MARKS.sub('', found[1])}`{END}", lists)
