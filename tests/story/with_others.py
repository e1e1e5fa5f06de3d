# SPDX-License-Identifier: MIT
# What a person does with the others of a programme, by taps.
import re


def begins_for_a_group(person, programme):
    person.tap("for a group")
    person.type_in("Your name", person.name)
    person.type_in("Programme or region", programme)
    person.tap("Begin the season")
    person.see("No trap yet")


def opens_page(person, beginning):
    """A page that stands under Year."""
    person.goes_to("Year")
    person.tap_what_begins(f"[{beginning},")


def founds_at_hub(person, url, code):
    opens_page(person, "Exchange")
    person.tap("Add a hub")
    person.type_in("Address of the hub", url)
    person.type_in("Founding code", code)
    person.tap("Exchange by this hub")
    person.see("What was new here is handed over")


def invites(person, name, role):
    """Gives the code as it is read out, and the link as it is sent."""
    opens_page(person, "Members and devices")
    person.tap("Invite somebody")
    person.type_in("Name", name)
    person.tap(role)
    person.type_in("The code is good until", "2199-12-31")  # the hub looks at a clock of its own
    person.tap("Make the code")
    person.see("The hub knows the code")
    person.picture("invitation")
    person.tap("Copy as text")
    said = person.act("clipboard")["said"]
    person.tap("I have handed it on")
    return re.search(r"code (\S+),", said).group(1), re.search(r"duskrow:\S+", said).group(0)


def joins_by_typing(person, code, url):
    person.tap("join by a code")
    person.type_in("Code, or the text you were sent", code.replace("-", "").lower())
    person.type_in("Address of the hub", url)
    person.picture("join")
    person.tap("Join")
    person.see(f"as {person.name}:")


def assigns(person, member, *fields):
    opens_page(person, "Members and devices")
    person.tap_what_begins(f"[{member},")
    person.see("Works at these fields too")
    for field in fields:
        person.tap(field)
        person.see(f"[*{field}]")
    person.picture("member")


def opens_exchange(person):
    """And waits until the exchange that the page itself begins is over."""
    opens_page(person, "Exchange")
    person.see("[Exchange now]")


def exchanges(person, *sees):
    """By every way there is; `sees` is what the screen says of it."""
    opens_exchange(person)
    person.tap("Exchange now")
    person.see("[Exchange now]", *sees)


def adds_folder(person, folder):
    opens_exchange(person)
    person.tap("Add a folder")
    person.type_in("A folder that the others can open too", folder)
    person.picture("folder")
    person.tap("Exchange by this folder")


def writes_file(person, folder):
    """A carried file; gives its path."""
    opens_exchange(person)
    person.tap("Write a file")
    person.type_in("Folder for the file", folder)
    person.tap("Write the file")
    written = person.says("Written: ")
    person.picture("written")
    return re.search(r"Written: (.*\.dusk)", written).group(1)


def takes_in_file(person, file):
    opens_exchange(person)
    person.tap("Open a file")
    person.type_in("A file from somebody else", file)
    person.tap("Look into it")
    person.see("[Take it in]")
    person.picture("carried")
    person.tap("Take it in")
    person.see("[Done]")
    person.picture("taken-in")
    person.tap("Done")
