"""What an event means: a submission, an answer, a word, a correction, a raised hand, people coming and going, or talk.

This is the one place where it is decided whether the bot was spoken to. Ordinary talk falls through to silence.
"""

from bot.errors import UserError
from bot.services import corrections, rooms, witnesses
from bot.services.authority import is_chef
from bot.services.house import House
from bot.services.ports.events import Edit, Membership, Message, Reaction, Received, Redaction, RoomState
from bot.services.ports.messages import Cause
from bot.services.ports.records import Kitchen
from bot.services.ports.world import UnitOfWork
from bot.services.said import Said
from bot.services.speaker import Speaker
from bot.services.submit import take_lines
from bot.words.answers import answer_open_question
from bot.words.registry import Vocabulary
from bot.words.reading import lines_of, lone_clock_line
