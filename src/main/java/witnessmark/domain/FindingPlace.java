package witnessmark.domain;

/** Where on an engine something was found, as the bench calls it. */
public enum FindingPlace implements Coded {
    PLUG("plug"),
    CROWN("crown"),
    RING_LAND("ring land"),
    RINGS("rings"),
    SKIRT("skirt"),
    PIN("piston pin"),
    PIN_BOSS("pin boss"),
    CIRCLIP("circlip"),
    BORE("bore"),
    ROD("rod"),
    LITTLE_END("little end"),
    ROD_HOUSING("big-end housing"),
    ROD_BOLT("rod bolt"),
    BIG_END_SHELL("big-end shell"),
    SHELL_BACK("back of a shell"),
    CRANK_PIN("crank pin"),
    MAIN_SHELL("main shell"),
    MAIN_JOURNAL("main journal"),
    MAIN_TUNNEL("main tunnel"),
    THRUST_FACE("thrust face"),
    CRANK("crank"),
    DAMPER("damper"),
    FLYWHEEL("flywheel"),
    BLOCK_FACE("block face"),
    HEAD_FACE("head face"),
    CHAMBER("chamber"),
    GASKET("head gasket"),
    FIRE_RING("fire ring"),
    STUD("stud or bolt"),
    VALVE("valve"),
    SEAT("valve seat"),
    GUIDE("valve guide"),
    SPRING("valve spring"),
    RETAINER("retainer and collets"),
    FOLLOWER("follower"),
    CAM("cam lobe"),
    CHAIN("chain or belt"),
    OIL_PUMP("oil pump"),
    OIL_FILTER("oil filter"),
    SUMP("sump and pick-up"),
    OIL_COOLER("oil cooler and lines"),
    WATER_PUMP("water pump"),
    HOSE("hose or clamp"),
    SEAL("seal"),
    INJECTOR("injector"),
    WIRING("wiring"),
    CLUTCH("clutch"),
    ELSEWHERE("elsewhere");

    private final String code;

    FindingPlace(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
