package rakeline.engine.jshell;

import jdk.jshell.spi.ExecutionControl;

/** An engine that takes everything and runs nothing, for a JShell that is to know names and types alone. */
final class Unrun implements ExecutionControl {
    /** Nothing. */
    @Override
    public void load(ClassBytecodes[] classes) {}

    /** Nothing. */
    @Override
    public void redefine(ClassBytecodes[] classes) {}

    @Override
    public String invoke(String className, String methodName) {
        return "";
    }

    @Override
    public String varValue(String className, String varName) {
        return "";
    }

    /** Nothing. */
    @Override
    public void addToClasspath(String path) {}

    /** Nothing. */
    @Override
    public void stop() {}

    @Override
    public Object extensionCommand(String command, Object arg) throws NotImplementedException {
        throw new NotImplementedException(command);
    }

    /** Nothing. */
    @Override
    public void close() {}
}
