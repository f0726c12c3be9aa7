package rakeline.engine.jshell;

import jdk.jshell.spi.ExecutionControl;

/** An engine that runs nothing, for a JShell that only reads; and what an engine of ours leaves out. */
class NoEngine implements ExecutionControl {
    @Override
    public void load(ClassBytecodes[] classes) throws ClassInstallException, NotImplementedException {
        throw new NotImplementedException("nothing runs here");
    }

    /** Never: calls noted before go on to mean what they meant. */
    @Override
    public void redefine(ClassBytecodes[] classes) throws NotImplementedException {
        throw new NotImplementedException("classes are replaced, not redefined");
    }

    @Override
    public String invoke(String className, String methodName) throws StoppedException {
        throw new StoppedException();
    }

    @Override
    public String varValue(String className, String varName) {
        return "";
    }

    /** Nothing: a worker is given its class path when it starts. */
    @Override
    public void addToClasspath(String path) {}

    /** Nothing: {@link Stopper} stops a row. */
    @Override
    public void stop() {}

    @Override
    public Object extensionCommand(String command, Object arg) throws NotImplementedException {
        throw new NotImplementedException(command);
    }

    /** Nothing: a session ends its workers. */
    @Override
    public void close() {}
}
