package rakeline.engine.jshell;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A row that has been compiled: the calls that run it again without compiling.
 *
 * @param calls in order
 * @param variables declared, with the classes that hold them
 * @param showsLastCall whether the row's result is the value of its last call
 * @param needs the versions of the rows that it was compiled against, by their ids
 * @param complete false: its first failure kept the rest from being compiled
 * @param rejection why Java did not accept what follows the calls, where that was the failure
 */
record Recording(
        List<Worker.Call> calls,
        List<Variable> variables,
        boolean showsLastCall,
        Map<String, Integer> needs,
        boolean complete,
        Optional<String> rejection) {

    /**
     * A variable of the page and the class that holds it.
     *
     * @param alone whether its snippet declares nothing else
     */
    record Variable(String name, String className, boolean alone) {}

    Recording {
        calls = List.copyOf(calls);
        variables = List.copyOf(variables);
        needs = Map.copyOf(needs);
    }

    /** The variable whose value is the row's result, where the last call's is not. */
    Optional<Variable> shown() {
        return showsLastCall
                ? Optional.empty()
                : variables.stream()
                        .filter(variable -> !variable.name().startsWith("$"))
                        .reduce((first, second) -> second);
    }

    /** The one variable that a call gives its first value. */
    Optional<String> declaredBy(Worker.Call call) {
        List<String> names = variables.stream()
                .filter(variable -> variable.alone() && variable.className().equals(call.className()))
                .map(Variable::name)
                .toList();
        return names.size() == 1 ? Optional.of(names.get(0)) : Optional.empty();
    }

    Recording compiledAgainst(Map<String, Integer> versions) {
        return new Recording(calls, variables, showsLastCall, versions, complete, rejection);
    }
}
