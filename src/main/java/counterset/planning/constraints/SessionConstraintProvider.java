package counterset.planning.constraints;

import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.ConstraintProvider;

/** All constraints of one session, in the order of their catalogue. */
public final class SessionConstraintProvider implements ConstraintProvider {

  @Override
  public Constraint[] defineConstraints(ConstraintFactory factory) {
    return new Constraint[] {
      SafetyConstraints.exerciseRepeated(factory),
      SafetyConstraints.sidesSplit(factory),
      SafetyConstraints.equipmentMissing(factory),
      SafetyConstraints.unsafeForClient(factory),
      HandlingConstraints.changeoverTooLong(factory),
      SafetyConstraints.clockOverrun(factory),
      SafetyConstraints.keptMoved(factory),
      SafetyConstraints.aboveLevel(factory),
      SafetyConstraints.excluded(factory),
      TrackConstraints.modificationMissing(factory),
      TrackConstraints.trackRepeated(factory),
      CoverageConstraints.targetUncovered(factory),
      CoverageConstraints.supersetEmpty(factory),
      CoverageConstraints.equipmentUnused(factory),
      CoverageConstraints.includeMissing(factory),
      HandlingConstraints.equipmentChange(factory),
      HandlingConstraints.changeoverSeconds(factory),
      HandlingConstraints.floorTrip(factory),
      PairingConstraints.opposingPair(factory),
      PairingConstraints.sameMuscleInARow(factory),
      CoverageConstraints.unevenVolume(factory),
      CoverageConstraints.mainLiftMissing(factory),
      TasteConstraints.lightBeforeHeavy(factory),
      TasteConstraints.familyAgain(factory),
      PairingConstraints.jointAgain(factory),
      TasteConstraints.unloaded(factory),
      TasteConstraints.tooEasy(factory),
      TasteConstraints.tooLight(factory),
      PairingConstraints.oneSidedShare(factory),
      TasteConstraints.usedRecently(factory),
      TasteConstraints.likes(factory),
      TasteConstraints.dislikes(factory),
      TrackConstraints.modificationAwkward(factory),
    };
  }
}
