package rakeline.engine.jshell;

import jdk.jshell.spi.ExecutionControl;

/** An engine that takes everything and runs nothing, for a JShell that is to know names and types alone. */
final class Unrun extends NoEngine {
    /** Nothing. */
    @Override
    public void load(ExecutionControl.ClassBytecodes[] classes) {}

    /** Nothing. */
    @Override
    public void redefine(ExecutionControl.ClassBytecodes[] classes) {}

    @Override
    public String invoke(String className, String methodName) {
        return "";
    }
}
