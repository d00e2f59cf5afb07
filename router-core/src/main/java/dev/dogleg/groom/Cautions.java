package dev.dogleg.groom;

import dev.dogleg.model.Behaviour;
import dev.dogleg.model.CoatState;
import java.util.ArrayList;
import java.util.List;

/**
 * What to mind about an animal. General words, no veterinary advice: local codes, licensed practice
 * and the vet's word come first.
 */
final class Cautions {
  private Cautions() {}

  static List<String> of(GroomQuestion question) {
    List<String> cautions = new ArrayList<>();
    if (question.state() == CoatState.PELTED) {
      cautions.add(
          "pelted coat: shaved short, never pulled or combed out; stop and send to the vet where"
              + " skin is hurt");
    }
    if (question.state() == CoatState.MATTED) {
      cautions.add("mats: what does not come out easily is clipped, never pulled");
    }
    if (question.behaviour() == Behaviour.DIFFICULT) {
      cautions.add("difficult: stop the groom when it is no longer safe for pet or groomer");
    }
    if (question.senior()) {
      cautions.add("senior: rests; two short visits where it cannot stand; the vet's word first");
    }
    if (question.look().breed().filter(Breed::flatFaced).isPresent()) {
      cautions.add("flat-faced: heat is dangerous sooner; cool hours, no hot drying");
    }
    return cautions;
  }
}
