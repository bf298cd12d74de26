package wireworthy.window.parts;

/** Names of the style classes, so that code and sheets can be held against each other. */
public final class Styles {
    // The strip and the window
    public static final String DESK = "desk";
    public static final String STRIP = "strip";
    public static final String WORDMARK = "wordmark";
    public static final String TERMINALS = "terminals";
    public static final String TERMINAL = "terminal";
    public static final String SCREW = "screw";
    public static final String SLOT = "slot";
    public static final String VIEW_MENU = "view-menu";
    public static final String PLACES_MENU = "places-menu";
    public static final String VEIL = "veil";
    public static final String LAID_CARD = "laid-card";
    public static final String KEYS = "keys";
    public static final String KEY = "key";

    // A list at the side where there is no room for it
    public static final String CONTENTS = "contents";
    public static final String CONTENTS_BAR = "contents-bar";

    // The sums in use
    public static final String FOOT = "foot";
    public static final String SUMS = "sums";
    public static final String SUMS_LINE = "sums-line";
    public static final String ONE_OF = "one-of";
    public static final String PICK_ROW = "pick-row";

    // Where I stand, and the people on this machine
    public static final String SKILL_ROW = "skill-row";
    public static final String SKILL_ROWS = "skill-rows";
    public static final String SKILL = "skill";
    public static final String SKILL_NAME = "skill-name";
    public static final String BELOW = "below";
    public static final String STATE = "state";
    public static final String PLOT = "plot";
    public static final String WAYS = "ways";
    public static final String PERSON = "person";

    // Pages and text
    public static final String PAGE = "page";
    public static final String PAGE_SCROLL = "page-scroll";
    public static final String TITLE = "title";
    public static final String SUBTITLE = "subtitle";
    public static final String PROSE = "prose";
    public static final String SOFT = "soft";
    public static final String COPPER_TEXT = "copper-text";
    public static final String STRONG = "strong";

    /** A figure in a table: aligned to the right. */
    public static final String FIGURE = "figure";

    // Parts
    public static final String CARD = "card";
    public static final String MAIN = "main";
    public static final String PLAIN = "plain";
    public static final String BUTTON_ROW = "button-row";
    public static final String BADGE = "badge";
    public static final String NOTICE = "notice";
    public static final String ICON = "icon";
    public static final String SOUND = "sound";
    public static final String UNSOUND = "unsound";
    public static final String CAUTION = "caution";

    /** Smaller text beside figures. */
    public static final String SMALL = "small";

    // Workings
    public static final String WORKING_LINE = "working-line";
    public static final String WORKING = "working";
    public static final String BRANCH = "branch";
    public static final String BRANCH_CELL = "branch-cell";

    public static final String WORKING_RAIL = "working-rail";

    public static final String WORKING_JOINT = "working-joint";

    // Drawings
    public static final String DRAWING = "drawing";
    public static final String DRAWING_TEXT = "drawing-text";
    public static final String SYMBOL = "symbol";
    public static final String SYMBOL_BODY = "symbol-body";
    public static final String HEAVY = "heavy";
    public static final String CROSS = "cross";
    public static final String JOINT = "joint";
    public static final String CONDUCTOR = "conductor";
    public static final String NOTES = "notes";
    public static final String MEASURE = "measure";

    // Practice
    public static final String TIGHT = "tight";
    public static final String BENCH = "bench";
    public static final String ONE_COLUMN = "one-column";
    public static final String BENCH_LEFT = "bench-left";
    public static final String ANSWER = "answer";
    public static final String PARTS = "parts";
    public static final String PICK_LIST = "pick-list";
    public static final String STEP_ROW = "step-row";
    public static final String TROUBLES = "troubles";

    // Live figures
    public static final String LIVE_FIGURE = "live-figure";
    public static final String FIGURE_GROUND = "figure-ground";
    public static final String IN_WORDS = "in-words";
    public static final String HANDLE = "handle";
    public static final String HANDLE_NAME = "handle-name";
    public static final String HANDLE_VALUE = "handle-value";
    public static final String LARGE = "large";
    public static final String SOUND_TEXT = "sound-text";
    public static final String UNSOUND_TEXT = "unsound-text";
    public static final String VERDICT = "verdict";
    public static final String ZONE_IDLE = "zone-idle";
    public static final String ZONE_SOUND = "zone-sound";
    public static final String ZONE_DANGER = "zone-danger";
    public static final String ZONE_WORDS = "zone-words";
    public static final String HATCHING = "hatching";
    public static final String AXIS = "axis-line";
    public static final String MARK = "mark-line";
    public static final String HAIRLINE = "hairline";
    public static final String GRID_LINE = "grid-line";
    public static final String LIMIT_LINE = "limit-line";
    public static final String FEED_LINE = "feed-line";
    public static final String IDLE_LINE = "idle-line";
    public static final String RING = "ring";
    public static final String OUTLINE = "outline";
    public static final String TRACK = "bar-track";
    public static final String BAR = "bar";
    public static final String BAR_NAME = "bar-name";
    public static final String CHOSEN = "chosen";
    public static final String HEAT = "heat";
    public static final String HEAT_LINE = "heat-line";
    public static final String FUSE_BAND = "fuse-band";
    public static final String COPPER_AREA = "copper-area";
    public static final String PICK = "pick";
    public static final String SWITCH = "switch";

    // Lists at the side, lessons and tables
    public static final String SIDE = "side";
    public static final String SIDE_LIST = "side-list";
    public static final String SIDE_ENTRY = "side-entry";
    public static final String SIDE_TITLE = "side-title";
    public static final String SIDE_NOTE = "side-note";
    public static final String LESSON = "lesson";
    public static final String LESSON_SCREEN = "lesson-screen";
    public static final String PROSE_FLOW = "prose-flow";
    public static final String PROSE_TEXT = "prose-text";
    public static final String EMPHASIS = "emphasis";
    public static final String HEADING = "heading";
    public static final String TITLE_TEXT = "title-text";
    public static final String SUBTITLE_TEXT = "subtitle-text";
    public static final String LIST_ITEM = "list-item";
    public static final String QUOTE = "quote";
    public static final String GLOSSARY_WORD = "glossary-word";
    public static final String MEANING = "meaning";
    public static final String CLOSE = "close";
    public static final String PLAIN_TABLE = "plain-table";
    public static final String TABLE_HEAD = "table-head";
    public static final String TABLE_CELL = "table-cell-text";
    public static final String FIGURE_TEXT = "figure-text";
    public static final String WORKING_STRIP = "working-strip";

    // Check my sums
    public static final String VEHICLE_SIDE = "vehicle-side";
    public static final String VEHICLE_SAID = "vehicle-said";
    public static final String FORM = "form";
    public static final String RESULTS = "results";
    public static final String STANDING = "standing";
    public static final String WHOLE = "whole";
    public static final String ENTRY = "entry";
    public static final String ENTRY_LABEL = "entry-label";
    public static final String ENTRY_FIELDS = "entry-fields";
    public static final String UNDER = "under";
    public static final String DISCLOSURE = "disclosure";
    public static final String LOAD_FORM = "load-form";
    public static final String OWN_SUMS = "own-sums";
    public static final String OWN_ROW = "own-row";
    public static final String OWN_FIGURES = "own-figures";
    public static final String OWN_VALUE = "own-value";
    public static final String OWN_FIGURE = "own-figure";
    public static final String SAYING = "saying";
    public static final String CHOICE = "choice";
    public static final String WIDE = "wide";
    public static final String WHERE = "where";
    public static final String COLUMN_ROW = "column-row";

    // The evening class
    public static final String EVENING_SIDE = "evening-side";
    public static final String EVENING_FORM = "evening-form";
    public static final String MARK_FIELD = "mark-field";
    public static final String MAKE_BENCH = "make-bench";
    public static final String SHEET_MARK = "sheet-mark";

    // At the projector
    public static final String PROJECTOR = "projector";
    public static final String PROJECTOR_BAR = "projector-bar";
    public static final String PROJECTOR_ROW = "projector-row";
    public static final String SIDE_BY_SIDE = "side-by-side";
    public static final String BESIDE = "beside";
    public static final String UNDER_IT = "under-it";
    public static final String CALLED_OUT = "called-out";
    public static final String CALLED_GROUP = "called-group";

    // Afterwards
    public static final String AFTER = "after";

    private Styles() {}
}
