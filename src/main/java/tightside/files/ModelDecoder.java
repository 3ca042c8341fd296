package tightside.files;

import java.util.List;
import java.util.Optional;
import tightside.drive.Audit;
import tightside.drive.Drive;
import tightside.drive.Finding;
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
  static Optional<Model> decode(Node root, Complaints complaints) throws Unreadable {
    FormatVersion.refuseOther(root, complaints);
    Optional<SectionReader> section =
        SectionReader.of(Optional.of(new Value(root, "", root.at(), complaints)));
    return section.isPresent()
        ? new ModelDecoder(root, complaints).model(section.get())
        : Optional.empty();
  }

  private Optional<Model> model(SectionReader s) {
    s.may(FormatVersion.KEY);
    Parts parts = DriveDecoder.parts(s);
    Optional<Value> behind = s.may("engine");
    Optional<Value> work = s.may("job");
    Optional<Drive> drive = s.sound() && complaints.errors() == 0 ? drive(parts) : Optional.empty();
    Optional<Engine> engine = EngineDecoder.engine(behind, parts.shafts());
    Optional<Job> job = EngineDecoder.job(work);
    return complaints.errors() == 0
        ? Optional.of(new Model(drive.get(), engine, parts.phasers(), job))
        : Optional.empty();
  }

  private Optional<Drive> drive(Parts parts) {
    Rotation rotation = parts.rotation().get();
    tell(Audit.of(rotation, parts.shafts().get(), parts.chains()));
    if (complaints.errors() > 0) {
      return Optional.empty();
    }
    Drive drive =
        new Drive(
            parts.name().get(), parts.about(), rotation, parts.shafts().get(), parts.chains());
    tell(Inspection.of(Solver.of(drive)));
    return Optional.of(drive);
  }

  private void tell(List<Finding> findings) {
    for (Finding finding : findings) {
      complaints.add(Places.of(root, finding.part()), finding);
    }
  }
}
