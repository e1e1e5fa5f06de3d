# SPDX-License-Identifier: MIT
# What a person does in the field, by taps.


def set_up_trap(person, field):
    """From the first screen to the kept trap, as it is at the end of the story's first day."""
    person.tap_one_of("Set up the first trap", "Set up a trap")
    person.type_in("Name of the field", field)
    person.tap("Next: the landowner’s yes", "It is my own land", "Next: the place", "Go on without a place",
               "Next: the trap", "The trap is clean", "Next: the lure", "I have read this", "The lure is in its basket",
               "The strip is in", "Next: a last look", "Keep this trap")
    person.see(f"Kept: {field}")
    person.tap("Back to today")


def opens_season(person, trap):
    person.goes_to("Traps")
    person.tap_what_begins(f"{trap},")


def counts(person, trap, moths):
    """Counts and keeps; ends on the first screen, the answer to keeping seen."""
    opens_season(person, trap)
    person.tap("Count now")
    tens, rest = divmod(moths, 10)
    person.tap(*["One more bertha armyworm moth: 10 more"] * tens, *["One more bertha armyworm moth"] * rest)
    person.tap("Next: look at the trap", "Next: lure and strip", "Yes: lure and strip there")
    person.see(f"{moths} moths over")
    person.tap("Keep this visit")
    person.see("Kept")


def opens_visit(person, trap, day):
    opens_season(person, trap)
    person.tap("Visits")
    person.tap_what_begins(f"[{day},")


def corrects(person, trap, day, moths):
    """Sets the count of a visit right; the rest of it stays."""
    opens_visit(person, trap, day)
    person.tap("Correct it", "One more bertha armyworm moth: type the number", "Clear the number",
               *(f"Digit {digit}" for digit in str(moths)), "Done", "Next: look at the trap", "Next: lure and strip",
               "Next: look it over", "Keep the correction")
    person.see("Kept")
