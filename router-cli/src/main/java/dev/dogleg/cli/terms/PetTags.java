package dev.dogleg.cli.terms;

import dev.dogleg.cli.terms.StopTagger.TaggedPet;
import dev.dogleg.groom.Breed;
import dev.dogleg.groom.PetLook;
import dev.dogleg.groom.StopQuestions;
import dev.dogleg.model.BookedPet;
import dev.dogleg.model.Pet;
import dev.dogleg.model.Tag;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The tags of one pet on a day: its own, and those that follow from what is known of it. */
final class PetTags {
  private static final Pattern SPACES = Pattern.compile("\\s+");

  private PetTags() {}

  static Set<String> of(TaggedPet tagged, LocalDate date) {
    Pet pet = tagged.pet();
    BookedPet booked = tagged.booked();
    PetLook look = tagged.look();
    Set<String> tags = new TreeSet<>();
    pet.tags().stream().filter(tag -> tag.holdsOn(date)).map(Tag::name).forEach(tags::add);
    tags.add(word(pet.species()));
    tags.add(word(look.size().taken()));
    tags.add(word(look.coat().taken()));
    tags.add(word(pet.behaviour()));
    tags.add(word(booked.coatState()));
    services(booked, pet).forEach(service -> tags.add(name(service)));
    if (look.breed().filter(Breed::flatFaced).isPresent()) {
      tags.add("flat-faced");
    }
    if (StopQuestions.isSenior(pet, date)) {
      tags.add(StopQuestions.SENIOR_TAG);
    }
    if (pet.neverGroomed()) {
      tags.add("first-visit");
    }
    return tags;
  }

  /** Services asked for: the booking's, else the pet's usual one. */
  static List<String> services(BookedPet booked, Pet pet) {
    return booked.services().isEmpty()
        ? List.of(pet.usualService().orElse(StopQuestions.USUAL_SERVICE))
        : booked.services();
  }

  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }

  static String name(String words) {
    return SPACES.matcher(words.toLowerCase(Locale.ROOT)).replaceAll("-");
  }
}
