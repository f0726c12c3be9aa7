package rakeline.broken.command;

/** Part of the house in which every rule is broken. */
public record Run() {
    public void speak() {
        System.out.println("a command may");
    }
}
