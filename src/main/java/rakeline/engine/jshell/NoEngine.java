package rakeline.engine.jshell;

import jdk.jshell.spi.ExecutionControl;

/** An engine that runs nothing, for a JShell that only reads. */
final class NoEngine implements ExecutionControl {
    @Override
    public void load(ClassBytecodes[] classes) throws NotImplementedException {
        throw new NotImplementedException("nothing runs here");
    }

    @Override
    public void redefine(ClassBytecodes[] classes) throws NotImplementedException {
        throw new NotImplementedException("nothing runs here");
    }

    @Override
    public String invoke(String className, String methodName) throws StoppedException {
        throw new StoppedException();
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
