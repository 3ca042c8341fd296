package tightside.files;

import java.util.List;
import java.util.Optional;
import tightside.drive.Audit;
import tightside.drive.Drive;
import tightside.drive.Finding;
import tightside.drive.Shaft;
import tightside.engine.Engine;
import tightside.files.DriveDecoder.Parts;
import tightside.job.Job;
import tightside.timing.Inspection;
import tightside.timing.Solver;

/**
 * Makes a model of a tree: first what is written, then whether it makes a drive, then whether it
 * fits.
 */
final class ModelDecoder {

  private final Node root;
  private final Complaints complaints;

  private ModelDecoder(Node root, Complaints complaints) {
    this.root = root;
    this.complaints = complaints;
  }

  static Optional<Model> decode(Node root, Complaints complaints) throws Unreadable {
    FormatVersion.refuseOther(root, complaints);
    ModelDecoder decoder = new ModelDecoder(root, complaints);
    Decoder<Model> model = SectionReader.section(decoder::model);
    return model.decode(new Value(root, "the file", root.at(), complaints));
  }

  private Optional<Model> model(SectionReader s) {
    s.may(FormatVersion.KEY, value -> Optional.of(value.what()));
    Optional<Parts> parts = DriveDecoder.parts(s);
    Optional<Drive> drive =
        complaints.errors() == 0 ? parts.flatMap(this::drive) : Optional.empty();
    Optional<List<Shaft>> shafts = parts.map(Parts::shafts);
    Optional<Engine> engine = s.may("engine", EngineDecoder.engine(shafts));
    Optional<Job> job = s.may("job", EngineDecoder.job());
    Optional<Model> model =
        s.built(() -> drive.map(d -> new Model(d, engine, parts.get().phasers(), job)))
            .flatMap(m -> m);
    return model;
  }

  private Optional<Drive> drive(Parts parts) {
    tell(Audit.of(parts.rotation(), parts.shafts(), parts.chains()));
    if (complaints.errors() > 0) {
      return Optional.empty();
    }
    Drive drive =
        new Drive(parts.name(), parts.about(), parts.rotation(), parts.shafts(), parts.chains());
    tell(Inspection.of(Solver.of(drive)));
    return Optional.of(drive);
  }

  private void tell(List<Finding> findings) {
    for (Finding finding : findings) {
      complaints.add(Places.of(root, finding.part()), finding);
    }
  }
}
