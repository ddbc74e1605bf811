package sawstead.check;

import java.util.List;

/** Every check that a station must answer, in the order in which they are asked. */
final class Checks {
  private Checks() {}

  static final List<Check> ALL =
      List.of(
          new FigureCheck(),
          new AlignmentCheck(),
          new BladeCheck(),
          new SledCheck(),
          new InsertCheck(),
          new ProudCheck(),
          new StabilityCheck(),
          new RemarkCheck(),
          new ClashCheck(),
          new MotionCheck(),
          new FeedCheck(),
          new ReliefCheck(),
          new SlackCheck(),
          new HoseCheck(),
          new FloorCheck(),
          new SheetCheck(),
          new ScrewHoldCheck(),
          new ScrewPathCheck(),
          new ReachCheck(),
          new ToolCheck(),
          new OrderCheck(),
          new ExitCheck(),
          new BoltCheck(),
          new PortCheck(),
          new SwitchCheck(),
          new PaddleCheck(),
          new RouterCheck(),
          new DrawerCheck(),
          new StorageCheck(),
          new LiftCheck(),
          new CertaintyCheck(),
          new SafetyCheck());
}
