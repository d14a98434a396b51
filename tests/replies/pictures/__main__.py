"""Draws the golden pictures anew: look at every one, at a phone's width, before it is committed."""

from tests.replies.pictures.golden import GOLDEN, keep, path_of

if __name__ == "__main__":
    for scene, language in GOLDEN:
        keep(scene, language)
        print(path_of(scene, language))
