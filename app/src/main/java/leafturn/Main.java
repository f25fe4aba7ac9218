package leafturn;

/** Builds the objects and runs one command. */
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    System.out.println("Leafturn");
  }
}
