using UnitsNet.Units;

namespace Loadmark.Reference.Libraries;

/// <summary>Every spelling the program reads, with the unit that UnitsNet has for what it means.</summary>
public static class UnitSpellings
{
    /// <summary>The spellings by the name of the program's unit.</summary>
    public static IReadOnlyDictionary<string, (Enum Base, IReadOnlyDictionary<string, Enum> Words)> All { get; } =
        new Dictionary<string, (Enum, IReadOnlyDictionary<string, Enum>)>
        {
            [nameof(Volt)] = (ElectricPotentialUnit.Volt, Words(
                (ElectricPotentialUnit.Volt, "V v volt volts"),
                (ElectricPotentialUnit.Millivolt, "mV mv millivolt millivolts"))),
            [nameof(Ampere)] = (ElectricCurrentUnit.Ampere, Words(
                (ElectricCurrentUnit.Ampere, "A a amp amps ampere amperes"),
                (ElectricCurrentUnit.Milliampere, "mA ma MA Ma milliamp milliamps milliampere milliamperes"),
                (ElectricCurrentUnit.Microampere, "µA μA uA ua microamp microamps"))),
            [nameof(Watt)] = (PowerUnit.Watt, Words(
                (PowerUnit.Watt, "W w watt watts"),
                (PowerUnit.Milliwatt, "mW mw milliwatt milliwatts"),
                (PowerUnit.Kilowatt, "kW"))),
            [nameof(VoltAmpere)] = (ApparentPowerUnit.Voltampere, Words(
                (ApparentPowerUnit.Voltampere, "VA va"))),
            [nameof(Ohm)] = (ElectricResistanceUnit.Ohm, Words(
                (ElectricResistanceUnit.Ohm, "Ω \u2126 ohm ohms R"),
                (ElectricResistanceUnit.Milliohm, "mΩ m\u2126 milliohm milliohms"),
                (ElectricResistanceUnit.Kiloohm, "kΩ k\u2126 kohm"))),
            [nameof(Second)] = (DurationUnit.Second, Words(
                (DurationUnit.Second, "s sec secs second seconds"),
                (DurationUnit.Millisecond, "ms millisecond milliseconds"),
                (DurationUnit.Microsecond, "µs μs us"),
                (DurationUnit.Minute, "min minute minutes"))),
            [nameof(Metre)] = (LengthUnit.Meter, Words(
                (LengthUnit.Meter, "m metre metres meter meters"),
                (LengthUnit.Centimeter, "cm"),
                (LengthUnit.Millimeter, "mm"))),
            [nameof(SquareMetre)] = (AreaUnit.SquareMeter, Words(
                (AreaUnit.SquareMillimeter, "mm² mm2 mm^2 sqmm sq_mm"))),
            [nameof(Farad)] = (CapacitanceUnit.Farad, Words(
                (CapacitanceUnit.Farad, "F"),
                (CapacitanceUnit.Millifarad, "mF"),
                (CapacitanceUnit.Microfarad, "µF μF uF uf"),
                (CapacitanceUnit.Nanofarad, "nF"),
                (CapacitanceUnit.Picofarad, "pF"))),
            [nameof(Hertz)] = (FrequencyUnit.Hertz, Words((FrequencyUnit.Hertz, "Hz hz HZ hertz"))),
        };

    /// <summary>Spellings by blanks; an underscore stands for a blank within one.</summary>
    private static Dictionary<string, Enum> Words(params ReadOnlySpan<(Enum Unit, string Spellings)> units)
    {
        var words = new Dictionary<string, Enum>(StringComparer.Ordinal);
        foreach (var (unit, spellings) in units)
        {
            foreach (var word in spellings.Split(' '))
                words.Add(word.Replace('_', ' '), unit);
        }

        return words;
    }
}
