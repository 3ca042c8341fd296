package tightside.files;

import java.util.List;
import java.util.Optional;
import tightside.drive.Audit;
import tightside.drive.Drive;
import tightside.drive.Finding;
import tightside.drive.Plan;
import tightside.engine.Engine;
import tightside.files.DriveDecoder.Parts;
import tightside.geometry.Rotation;
import tightside.job.Job;
import tightside.timing.Inspection;
import tightside.timing.Solver;

/**
 * Makes a model of a tree: first what is written, then whether it makes a drive, then whether its
 * chains fit. Each is asked only where what went before leaves it a meaning.
 */
final class ModelDecoder {

  private final Node root;
  private final Complaints complaints;

  private ModelDecoder(Node root, Complaints complaints) {
    this.root = root;
    this.complaints = complaints;
  }

  /**
   * @throws Unreadable for a format from the future
   */
  static Decoded decode(Node root, Complaints complaints) throws Unreadable {
    FormatVersion.refuseOther(root, complaints);
    Optional<SectionReader> section =
        SectionReader.of(Optional.of(new Value(root, "", root.at(), complaints)));
    return section.isPresent()
        ? new ModelDecoder(root, complaints).model(section.get())
        : Decoded.nothing();
  }

  private Decoded model(SectionReader s) {
    s.may(FormatVersion.KEY);
    Parts parts = DriveDecoder.parts(s);
    Optional<Value> behind = s.may("engine");
    Optional<Value> work = s.may("job");
    Optional<Value> survey = s.may("measurements");
    boolean sound = s.sound() && complaints.errors() == 0;
    Optional<Drive> drive = sound ? drive(parts) : Optional.empty();
    Optional<MeasuredDrive> measured =
        drive.isPresent() && survey.isPresent()
            ? SurveyDecoder.measured(survey.get(), drive.get())
            : Optional.empty();
    if (drive.isPresent() && complaints.errors() == 0) {
      Drive used = measured.isPresent() ? measured.get().adjustment().best() : drive.get();
      tell(Inspection.of(Solver.of(used)));
    }
    Optional<Engine> engine = EngineDecoder.engine(behind, parts.shafts());
    Optional<Job> job = JobDecoder.job(work);
    if (complaints.errors() == 0) {
      Model model = new Model(drive.get(), engine, parts.phasers(), job, measured);
      return new Decoded(Optional.of(model), Optional.empty());
    }
    boolean whole = sound && survey.isEmpty() && engine.isPresent() == behind.isPresent();
    return new Decoded(
        Optional.empty(),
        whole
            ? Optional.of(new Unfinished(plan(parts), engine, parts.phasers(), job))
            : Optional.empty());
  }

  private static Plan plan(Parts parts) {
    return new Plan(
        parts.name().get(),
        parts.about(),
        parts.rotation().get(),
        parts.shafts().get(),
        parts.chains());
  }

  private Optional<Drive> drive(Parts parts) {
    Rotation rotation = parts.rotation().get();
    tell(Audit.of(rotation, parts.shafts().get(), parts.chains()));
    if (complaints.errors() > 0) {
      return Optional.empty();
    }
    return Optional.of(
        new Drive(
            parts.name().get(), parts.about(), rotation, parts.shafts().get(), parts.chains()));
  }

  private void tell(List<Finding> findings) {
    for (Finding finding : findings) {
      complaints.add(Places.of(root, finding.part()), finding);
    }
  }
}
