package tightside.studies;

/** A program that does nothing: what starting the virtual machine costs by itself. */
final class Nothing {

  private Nothing() {}

  public static void main(String[] words) {}
}
