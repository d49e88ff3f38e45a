package curbwatt.scenarios.json;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.scenarios.file.AirEntry;
import curbwatt.scenarios.file.AlternatorEntry;
import curbwatt.scenarios.file.AutomaticStartEntry;
import curbwatt.scenarios.file.AuxiliaryEntry;
import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.file.BehaviourWord;
import curbwatt.scenarios.file.ChemistryWord;
import curbwatt.scenarios.file.CircuitEntry;
import curbwatt.scenarios.file.CutoffEntry;
import curbwatt.scenarios.file.DayEntry;
import curbwatt.scenarios.file.DutyEntry;
import curbwatt.scenarios.file.EngineEntry;
import curbwatt.scenarios.file.EngineWord;
import curbwatt.scenarios.file.FeedEntry;
import curbwatt.scenarios.file.FlashEntry;
import curbwatt.scenarios.file.FuelWord;
import curbwatt.scenarios.file.FuseEntry;
import curbwatt.scenarios.file.FuseWord;
import curbwatt.scenarios.file.HoldEntry;
import curbwatt.scenarios.file.IdleControlEntry;
import curbwatt.scenarios.file.IdleEntry;
import curbwatt.scenarios.file.InrushEntry;
import curbwatt.scenarios.file.KelvinSpreadEntry;
import curbwatt.scenarios.file.KeyUnit;
import curbwatt.scenarios.file.LeastVoltageEntry;
import curbwatt.scenarios.file.LinkEntry;
import curbwatt.scenarios.file.LinkWord;
import curbwatt.scenarios.file.LoadEntry;
import curbwatt.scenarios.file.MaterialWord;
import curbwatt.scenarios.file.NodeWord;
import curbwatt.scenarios.file.OddsEntry;
import curbwatt.scenarios.file.OutputEntry;
import curbwatt.scenarios.file.PercentSpreadEntry;
import curbwatt.scenarios.file.PhaseEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.RandomDutyEntry;
import curbwatt.scenarios.file.RechargeEntry;
import curbwatt.scenarios.file.RecloseEntry;
import curbwatt.scenarios.file.RecloseWord;
import curbwatt.scenarios.file.RequirementsEntry;
import curbwatt.scenarios.file.ReturnWord;
import curbwatt.scenarios.file.RosterEntry;
import curbwatt.scenarios.file.SamplingWord;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.SceneEntry;
import curbwatt.scenarios.file.SettingsEntry;
import curbwatt.scenarios.file.SizeEntry;
import curbwatt.scenarios.file.SpeedEntry;
import curbwatt.scenarios.file.SpreadWord;
import curbwatt.scenarios.file.StartEntry;
import curbwatt.scenarios.file.StarterEntry;
import curbwatt.scenarios.file.StepEntry;
import curbwatt.scenarios.file.StudiesEntry;
import curbwatt.scenarios.file.SyncWord;
import curbwatt.scenarios.file.TraceEntry;
import curbwatt.scenarios.file.UnderHoodEntry;
import curbwatt.scenarios.file.VehicleEntry;
import curbwatt.scenarios.file.VoltSpreadEntry;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/** Schema and records say the same, each key has a unit or needs none, and every number has a range. */
class SchemaAgreementTest {
    private static final Map<String, Class<?>> RECORDS = Map.ofEntries(
            Map.entry("scenario", ScenarioFile.class),
            Map.entry("vehicle", VehicleEntry.class),
            Map.entry("battery", BatteryEntry.class),
            Map.entry("auxiliary", AuxiliaryEntry.class),
            Map.entry("link", LinkEntry.class),
            Map.entry("alternator", AlternatorEntry.class),
            Map.entry("output", OutputEntry.class),
            Map.entry("circuit", CircuitEntry.class),
            Map.entry("feed", FeedEntry.class),
            Map.entry("load", LoadEntry.class),
            Map.entry("flash", FlashEntry.class),
            Map.entry("duty", DutyEntry.class),
            Map.entry("cutoff", CutoffEntry.class),
            Map.entry("reclose", RecloseEntry.class),
            Map.entry("starter", StarterEntry.class),
            Map.entry("scene", SceneEntry.class),
            Map.entry("roster", RosterEntry.class),
            Map.entry("day", DayEntry.class),
            Map.entry("start", StartEntry.class),
            Map.entry("phase", PhaseEntry.class),
            Map.entry("speed", SpeedEntry.class),
            Map.entry("requirements", RequirementsEntry.class),
            Map.entry("hold", HoldEntry.class),
            Map.entry("leastVoltage", LeastVoltageEntry.class),
            Map.entry("air", AirEntry.class),
            Map.entry("inrush", InrushEntry.class),
            Map.entry("randomDuty", RandomDutyEntry.class),
            Map.entry("fuse", FuseEntry.class),
            Map.entry("step", StepEntry.class),
            Map.entry("idleControl", IdleControlEntry.class),
            Map.entry("automaticStart", AutomaticStartEntry.class),
            Map.entry("engine", EngineEntry.class),
            Map.entry("studies", StudiesEntry.class),
            Map.entry("settings", SettingsEntry.class),
            Map.entry("size", SizeEntry.class),
            Map.entry("idle", IdleEntry.class),
            Map.entry("odds", OddsEntry.class),
            Map.entry("recharge", RechargeEntry.class),
            Map.entry("percentSpread", PercentSpreadEntry.class),
            Map.entry("kelvinSpread", KelvinSpreadEntry.class),
            Map.entry("voltSpread", VoltSpreadEntry.class),
            Map.entry("underHood", UnderHoodEntry.class),
            Map.entry("trace", TraceEntry.class));

    /** Keys that no entry keeps: one is for the editor, the other is done with once the schema has looked at it. */
    private static final Set<String> NOT_KEPT = Set.of("$schema", "format");

    @Test
    void everyObjectHasARecord() {
        assertThat(SchemaObjects.all()).containsOnlyKeys(RECORDS.keySet());
    }

    @ParameterizedTest
    @MethodSource("objects")
    void keysAndComponentsAreTheSame(String name, JsonNode object) {
        Set<String> keys = new TreeSet<>(object.path("properties").propertyNames());
        keys.removeAll(NOT_KEPT);
        List<String> components = Arrays.stream(RECORDS.get(name).getRecordComponents())
                .map(RecordComponent::getName)
                .filter(component -> !component.equals("place"))
                .toList();
        assertThat(components).containsExactlyInAnyOrderElementsOf(keys);
        assertThat(object.path("additionalProperties").booleanValue(true)).isFalse();
    }

    @ParameterizedTest
    @MethodSource("objects")
    void everyKeyIsDescribedAndEveryNumberBounded(String name, JsonNode object) {
        object.path("properties").properties().forEach(key -> {
            JsonNode schema = SchemaObjects.resolved(key.getValue());
            assertThat(schema.path("description").stringValue(""))
                    .as(key.getKey())
                    .isNotBlank();
            if (schema.path("type").stringValue("").equals("number")) {
                assertThat(schema.has("minimum") && schema.has("maximum"))
                        .as("range of " + key.getKey())
                        .isTrue();
                boolean ratio = key.getKey().matches(".*(Factor|FactorLow|FactorHigh|Ratio|Exponent)");
                assertThat(KeyUnit.of(Place.ROOT.key(key.getKey())).isEmpty())
                        .as("no unit in " + key.getKey())
                        .isEqualTo(ratio);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("words")
    void wordsAreTheSame(String object, String key, Object[] words) {
        List<String> allowed = new ArrayList<>();
        SchemaObjects.all()
                .get(object)
                .at("/properties/" + key + "/enum")
                .forEach(word -> allowed.add(word.stringValue()));
        assertThat(Arrays.stream(words).map(Object::toString)).containsExactlyInAnyOrderElementsOf(allowed);
    }

    @Test
    void oneKeyHasOneRangeWhereverItStands() {
        Map<String, Set<String>> ranges = new java.util.TreeMap<>();
        SchemaObjects.all()
                .values()
                .forEach(object -> object.path("properties").properties().stream()
                        .filter(key -> key.getValue().has("minimum"))
                        .forEach(key -> ranges.computeIfAbsent(key.getKey(), name -> new HashSet<>())
                                .add(key.getValue().path("minimum") + " to "
                                        + key.getValue().path("maximum"))));
        assertThat(ranges)
                .isNotEmpty()
                .allSatisfy((key, found) -> assertThat(found).as(key).hasSize(1));
    }

    static Stream<Arguments> objects() {
        return SchemaObjects.all().entrySet().stream().map(object -> Arguments.of(object.getKey(), object.getValue()));
    }

    static Stream<Arguments> words() {
        return Stream.of(
                Arguments.of("battery", "chemistry", ChemistryWord.values()),
                Arguments.of("link", "kind", LinkWord.values()),
                Arguments.of("circuit", "node", NodeWord.values()),
                Arguments.of("cutoff", "senseAtNode", NodeWord.values()),
                Arguments.of("engine", "fuel", FuelWord.values()),
                Arguments.of("idleControl", "senseAtNode", NodeWord.values()),
                Arguments.of("automaticStart", "senseAtNode", NodeWord.values()),
                Arguments.of("fuse", "kind", FuseWord.values()),
                Arguments.of("feed", "material", MaterialWord.values()),
                Arguments.of("feed", "returnBy", ReturnWord.values()),
                Arguments.of("load", "sync", SyncWord.values()),
                Arguments.of("load", "behaviour", BehaviourWord.values()),
                Arguments.of("reclose", "when", RecloseWord.values()),
                Arguments.of("odds", "sampling", SamplingWord.values()),
                Arguments.of("percentSpread", "distribution", SpreadWord.values()),
                Arguments.of("kelvinSpread", "distribution", SpreadWord.values()),
                Arguments.of("voltSpread", "distribution", SpreadWord.values()),
                Arguments.of("phase", "engine", EngineWord.values()));
    }
}
