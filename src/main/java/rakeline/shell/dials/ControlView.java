package rakeline.shell.dials;

import rakeline.engine.Control;

/** What shows one dial or picker. */
interface ControlView {
    /** Whether it is this control that is shown, at whatever value. */
    boolean shows(Control control);

    void show(Control control);
}
