package witnessmark.trace.text;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import witnessmark.domain.ChannelKind;

/** Headings as the trade writes them, in several languages; our own list of general terms. Accents and case do not matter. */
final class Channels {
    private static final Map<String, ChannelKind> KNOWN = new HashMap<>();
    private static final Set<String> NOISE = words("""
            sensor | channel | ch | ecu | can | avg | mean | filtered | raw | calc | calib | value | signal |
            logger | analog | corr | 1hz | sig | der | la | le | de | du | del | di | die | das | the | of""").collect(Collectors.toUnmodifiableSet());
    private static final Set<String> TIMES = words("""
            time | t | zeit | temps | tempo | tiempo | elapsed | elapsed time | timestamp | time stamp | sec |
            secs | second | seconds | sekunden | secondes | secondi | clock | uhrzeit | heure | ora | hora | log
            time | run time | ms | msec | millis | milliseconds | zeitstempel | messzeit | time s
            | time ms | time sec | utc | utc time | local time | relative time | rel time | datetime | date time
            | time of day | horodatage | interval | xtime | time us | minutes | x""").collect(Collectors.toUnmodifiableSet());
    private static final Pattern CYLINDER = Pattern.compile(
            "(?:egt|exhaust|exh|exhaust gas|abgas|abgastemperatur|abgastemp|echappement|scarico|escape|agt)"
                    + "(?: (?:temp|temperature|gas|gas temp|gas temperature|cyl|cylinder|zyl|zylinder|t|bank|temp cyl))*"
                    + " ?([1-8])");

    private Channels() {}

    static {
        say(ChannelKind.ENGINE_SPEED, """
                rpm | engine speed | engine rpm | motor speed | n mot | nmot | n motor | n engine | nengine | revs |
                engine revs | drehzahl | motordrehzahl | regime | regime moteur | tr min | giri | giri motore |
                regimen | regimen motor | rev counter | tacho | tachometer | eng speed | eng rpm | engine n | crank
                speed | crankshaft speed | n | u min | revolutions | vueltas motor | engine revolutions | speed
                engine | ne | rev""");
        say(ChannelKind.THROTTLE, """
                throttle | tps | throttle pos | throttle position | throttle pedal | pedal | accelerator |
                accelerator pedal | gas pedal | drosselklappe | drosselklappenwinkel | gaspedal | fahrpedal |
                papillon | position papillon | accelerateur | farfalla | posizione farfalla | acelerador | mariposa
                | throttle angle | tp | throttle valve | dk | alpha""");
        say(ChannelKind.CAR_SPEED, """
                speed | car speed | vehicle speed | road speed | ground speed | gps speed | wheel speed |
                geschwindigkeit | fahrzeuggeschwindigkeit | vitesse | vitesse vehicule | velocita | velocidad | v
                car | v | vehicle v | speed gps | speed over ground | v gps | kmh | km h | mph | wheel speed fl |
                speed wheel | corrected speed""");
        say(ChannelKind.LATERAL, """
                lateral g | lat g | g lat | lateral acc | lateral accel | lateral acceleration | lat acc | lat accel
                | acc lat | accel lat | querbeschleunigung | quer g | acceleration laterale | accelerazione laterale
                | aceleracion lateral | g force lat | ay | a y | g y | accel y | glat | latg | lateral""");
        say(ChannelKind.LONGITUDINAL, """
                longitudinal g | long g | lon g | g long | g lon | longitudinal acc | longitudinal accel |
                longitudinal acceleration | long acc | long accel | acc long | accel long | laengsbeschleunigung |
                langsbeschleunigung | laengs g | acceleration longitudinale | accelerazione longitudinale |
                aceleracion longitudinal | g force long | ax | a x | g x | accel x | glong | longg | longitudinal""");
        say(ChannelKind.OIL_PRESSURE, """
                oil pressure | oil press | oil p | p oil | poil | oilp | eng oil pressure | engine oil pressure |
                oeldruck | oldruck | motoroeldruck | motoroldruck | pression huile | pression d huile | press huile
                | p huile | pressione olio | presion aceite | presion de aceite | oil pres | oilpress | oilpressure
                | p oel | p ol | eng oil press | engine oil press""");
        say(ChannelKind.OIL_TEMPERATURE, """
                oil temperature | oil temp | oil t | t oil | toil | oilt | engine oil temp | engine oil temperature
                | eng oil temp | oeltemperatur | oltemperatur | oeltemp | oltemp | temperature huile | temperature d
                huile | temp huile | t huile | temperatura olio | temp olio | temperatura aceite | temp aceite |
                oiltemp | oiltemperature | t oel | t ol | motoroeltemperatur""");
        say(ChannelKind.WATER_TEMPERATURE, """
                water temperature | water temp | coolant temperature | coolant temp | water t | t water | twater |
                watert | ect | clt | engine coolant temperature | engine coolant temp | engine temperature | engine
                temp | eng temp | coolant t | t coolant | wassertemperatur | wassertemp | kuehlwassertemperatur |
                kuhlwassertemperatur | kuehlmitteltemperatur | kuhlmitteltemperatur | temperature eau | temperature
                d eau | temp eau | t eau | temperatura acqua | temp acqua | temperatura agua | temp agua | watertemp
                | watertemperature | t wasser | coolanttemp | coolant | t mot | eng coolant temp | temperature
                moteur | motortemperatur""");
        say(ChannelKind.WATER_PRESSURE, """
                water pressure | water press | coolant pressure | coolant press | p water | water p | wasserdruck |
                kuehlwasserdruck | pression eau | pression d eau | pressione acqua | presion agua | p coolant |
                cooling pressure | waterpress | waterpressure""");
        say(ChannelKind.FUEL_PRESSURE, """
                fuel pressure | fuel press | p fuel | fuel p | pfuel | kraftstoffdruck | benzindruck | pression
                essence | pression carburant | pressione benzina | presion combustible | presion gasolina | fuel
                rail pressure | rail pressure | fuelpress | fuelpressure | fuel pres""");
        say(ChannelKind.LAMBDA, """
                lambda | lambda 1 | lambda1 | wideband | wideband lambda | measured lambda | exhaust lambda | lambda
                value | lambda bank 1 | lam""");
        say(ChannelKind.EXHAUST_1, """
                egt | exhaust temperature | exhaust temp | exhaust gas temperature | exhaust gas temp |
                abgastemperatur | temperature echappement | temp echappement | temperatura scarico | temperatura
                escape | t abgas | t exhaust""");
        say(ChannelKind.GEAR, """
                gear | gear pos | gear position | current gear | gang | gangstufe | ganganzeige | rapport | rapport
                engage | marcia | marcha | gear number | gear no | selected gear""");
        say(ChannelKind.CRANKCASE_PRESSURE, """
                crankcase pressure | crankcase press | crankcase vacuum | crankcase depression | sump pressure |
                crankcase | kurbelgehaeusedruck | kurbelgehausedruck | pression carter | depression carter |
                pressione basamento | pressione carter | presion carter | p crankcase""");
        say(ChannelKind.BATTERY, """
                battery | battery voltage | batt | batt volt | batt volts | vbatt | v batt | vbat | supply voltage |
                ubatt | u batt | batterie | batteriespannung | bordspannung | tension batterie | batteria | tensione
                batteria | bateria | tension bateria | battery volts | volts | bat voltage""");
        say(ChannelKind.LAP, """
                lap | lap number | lap no | lap count | lap counter | beacon | lap marker | lap mark | lap beacon |
                runde | rundenzahl | rundennummer | rundenzaehler | rundenzahler | tour | no tour | giro | vuelta |
                lap trigger | laps | lap index | lap num""");
        say(ChannelKind.TORQUE, """
                torque | engine torque | drehmoment | motordrehmoment | couple | coppia | par | par motor | brake
                torque | moment | md | dyno torque | measured torque""");
        say(ChannelKind.POWER, """
                power | engine power | leistung | motorleistung | puissance | potenza | potencia | brake power |
                dyno power | p eff | measured power | kw | hp | bhp""");
        say(ChannelKind.KNOCK, """
                knock | knock level | knock count | klopfen | klopfsignal | cliquetis | detonazione | detonacion |
                knock sensor | knock intensity | detonation | knock retard""");
        say(ChannelKind.DISTANCE, """
                distance | dist | lap distance | strecke | weg | distanz | distanza | distancia | odometer |
                distance travelled | odo""");
    }

    private static void say(ChannelKind kind, String headings) {
        words(headings).forEach(heading -> KNOWN.put(heading, kind));
    }

    /** Words parted by bars, over several lines. */
    static Stream<String> words(String text) {
        return Stream.of(text.split("\\|")).map(word -> word.strip().replaceAll("\\s+", " "));
    }

    /** What a heading means; empty when it is none of the list. */
    static Optional<ChannelKind> of(String heading) {
        String plain = plain(heading);
        Optional<ChannelKind> whole = known(plain);
        return whole.isPresent() ? whole : known(plain(split(heading)));
    }

    private static Optional<ChannelKind> known(String plain) {
        String text = plain;
        for (int round = 0; round < 2; round++) {
            Matcher cylinder = CYLINDER.matcher(text);
            if (cylinder.matches()) {
                return Optional.of(ChannelKind.exhaust(Integer.parseInt(cylinder.group(1))));
            }
            ChannelKind kind = KNOWN.get(text);
            if (kind != null) {
                return Optional.of(kind);
            }
            text = withoutNoise(text);
        }
        return Optional.empty();
    }

    static boolean isTime(String heading) {
        String plain = plain(heading);
        return TIMES.contains(plain) || TIMES.contains(withoutNoise(plain));
    }

    /** Lower case, no accents, a single space for whatever parts words. */
    static String plain(String text) {
        String apart = Normalizer.normalize(text.replace("\u00df", "ss"), Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "");
        return apart.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{Nd}]+", " ")
                .strip();
    }

    /** Words run together by capitals, parted: OilPress to Oil Press. */
    private static String split(String heading) {
        return heading.replaceAll("(?<=\\p{Ll})(?=\\p{Lu})", " ").replaceAll("(?<=\\p{L})(?=\\p{Nd})", " ");
    }

    private static String withoutNoise(String plain) {
        StringBuilder kept = new StringBuilder();
        for (String word : plain.split(" ", -1)) {
            if (!NOISE.contains(word)) {
                kept.append(kept.length() == 0 ? "" : " ").append(word);
            }
        }
        return kept.toString();
    }
}
