package wireworthy.window.check;

/** Something that shows the vehicle as it stands when it is told to. */
interface Refreshing {
    /** Shows what there is now; cheap where nothing has changed. */
    void refresh();
}
