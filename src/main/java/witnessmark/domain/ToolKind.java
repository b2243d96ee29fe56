package witnessmark.domain;

/** What a tool is. */
public enum ToolKind implements Coded {
    TORQUE_WRENCH("torque wrench"),
    ANGLE_GAUGE("angle gauge"),
    STRETCH_GAUGE("stretch gauge"),
    MICROMETER("micrometer"),
    BORE_GAUGE("bore gauge"),
    DIAL_GAUGE("dial gauge"),
    DEPTH_GAUGE("depth gauge"),
    FEELER_GAUGE("feeler gauge"),
    STRAIGHTEDGE("straightedge"),
    LEAK_DOWN_TESTER("leak-down tester"),
    COMPRESSION_TESTER("compression tester"),
    SPRING_TESTER("spring tester"),
    PRESSURE_GAUGE("pressure gauge"),
    OTHER("other");

    private final String code;

    ToolKind(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }
}
