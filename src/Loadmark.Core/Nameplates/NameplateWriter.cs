using System.Text;
using Loadmark.Core.Gear;

using Loadmark.Core.Nameplates.Parsing;

namespace Loadmark.Core.Nameplates;

/// <summary>Writes a reading as label text in the program's own spelling, which reads back as the same reading.</summary>
public static partial class NameplateWriter
{
    /// <summary>
    /// Writes the inputs, the modes with their form or the outlets with theirs, the polarity, the plug, the regulation, the voltage with
    /// nothing drawn, the ground, the isolation, the total, and which topics were not understood. What was derived is left out, because it
    /// is derived again; what was unread, or ambiguous among figures, is left out too.
    /// </summary>
    /// <example><c>MAINS 100-240V 50-60Hz 0.6A OUTPUT 9V DC 0.5A; 12V 0.4A, centre negative, 5.5x2.1</c>.</example>
    /// <exception cref="ArgumentNullException"><paramref name="nameplate"/> is null.</exception>
    public static string Write(Nameplate nameplate) => Write(nameplate, nameplate?.NotUnderstood ?? default);

    /// <summary>The same without the topics that were not understood: two readings of which this is alike tell the same figures.</summary>
    /// <param name="nameplate">The reading.</param>
    internal static string WriteFigures(Nameplate nameplate) => Write(nameplate, default);

    private static string Write(Nameplate? nameplate, LabelTopics notUnderstood)
    {
        ArgumentNullException.ThrowIfNull(nameplate);

        var text = new StringBuilder();
        if (nameplate.Mains is { } mains)
            AppendMains(text, mains);
        if (nameplate.Input is { } input)
            AppendInput(text, input);
        if (nameplate is { Input: not null, Outlets.IsEmpty: true } && !nameplate.Modes.Any(mode => mode.VoltsPlace is not null))
            text.Append(" OUTPUT voltage?");
        if (nameplate.Outlets.IsEmpty)
            AppendModes(text, nameplate);
        else
            Separate(text, " OUTPUTS: ").Append(FormWord(nameplate.Form));
        AppendPolarity(text, nameplate.Polarity);
        AppendPlug(text, nameplate.Plug);
        AppendRegulation(text, nameplate.Regulated);
        if (nameplate.NoLoad is { } unloaded)
            Separate(text, ", ").Append("no load ").Append(LabelFigure.Write(unloaded.Value, "V"));
        AppendGround(text, nameplate.Ground);
        AppendIsolation(text, nameplate.Isolated);
        AppendNotUnderstood(text, notUnderstood);
        foreach (var group in nameplate.Outlets)
            AppendOutlets(text, group, nameplate);
        if (nameplate.Total is { } total)
            AppendTotal(nameplate is { Modes.IsEmpty: true, Outlets.IsEmpty: true } ? text.Append(" OUTPUT") : text, total);
        return text.ToString();
    }

    private static void AppendMains(StringBuilder text, MainsInput mains)
    {
        text.Append("MAINS");
        if (mains.Choices.IsEmpty)
            AppendRange(text, " ", mains.Volts, "V");
        foreach (var choice in mains.Choices)
            AppendRange<Volt>(text, text[^1] == 'S' ? " " : "/", choice, "V");
        AppendRange(text, " ", mains.Hertz, "Hz");
        if (mains.Amps is { } amps)
            text.Append(' ').Append(LabelFigure.Write(amps.Value, "A"));
        if (mains.Watts is { } watts)
            text.Append(' ').Append(LabelFigure.Write(watts.Value, "W"));
        if (mains.VoltAmps is { } voltAmps)
            text.Append(' ').Append(LabelFigure.Write(voltAmps.Value, "VA"));
    }

    private static void AppendModes(StringBuilder text, Nameplate nameplate)
    {
        var form = FormWord(nameplate.Form);
        if (nameplate.Modes.IsEmpty)
        {
            Separate(text, " ").Append(form);
            return;
        }

        // What comes after an input is said to be the output's; "each" says that there are several.
        if (nameplate.EachOutlet)
            Separate(text, " ").Append("EACH OUTPUT: ");
        else if (text.Length > 0)
            text.Append(" OUTPUT ");
        var told = text.Length > 0;

        // Volts that were derived are derived again from the watts and amps; written, they would count as printed.
        var derivedVolts = nameplate.Derived.Contains("volts");
        var loose = nameplate.Modes.Any(mode => IsLoose(mode, derivedVolts));
        var high = nameplate.Modes.Any(mode => mode.Volts is { } volts && volts.High.Value >= FigureCollector.LowestMains);
        for (var i = 0; i < nameplate.Modes.Length; i++)
        {
            var mode = nameplate.Modes[i];

            // A figure without a voltage would join the mode before it; the word keeps them apart.
            if (i > 0)
                text.Append("; ");
            if (i == 0 ? !told && (loose || high) : loose)
                text.Append("OUTPUT ");
            AppendMode(text, mode, i == 0 ? form : "", !IsLoose(mode, derivedVolts));
        }
    }

    /// <summary>Whether no voltage is printed.</summary>
    private static bool IsLoose(Mode mode, bool derivedVolts) =>
        mode.Volts == null || (derivedVolts && mode is { Amps.Origin: Origin.Stated, Watts.Origin: Origin.Stated, VoltsPlace: null });

    private static void AppendMode(StringBuilder text, Mode mode, string form, bool writesVolts)
    {
        var start = text.Length;
        if (writesVolts)
            AppendRange(text, "", mode.Volts, "V");
        if (form.Length > 0)
            text.Append(text.Length > start ? " " : "").Append(form);
        AppendRange(text, text.Length > start ? " " : "", mode.Hertz, "Hz");
        if (mode.Amps is { Origin: not Origin.Derived } amps)
        {
            var high = LabelFigure.Write(amps.Value.Value, "A");
            text.Append(text.Length > start ? " " : "")
                .Append(mode.AmpsFrom is { } from ? $"{LabelFigure.Write(from.Value, "A")} to {high}" : high);
        }

        if (mode.Watts is { Origin: not Origin.Derived } watts)
            text.Append(text.Length > start ? " " : "").Append(LabelFigure.Write(watts.Value.Value, "W"));
        if (mode.VoltAmps is { Origin: not Origin.Derived } voltAmps)
            text.Append(text.Length > start ? " " : "").Append(LabelFigure.Write(voltAmps.Value.Value, "VA"));
    }

    private static void AppendRange<TUnit>(StringBuilder text, string before, QuantityRange<TUnit>? range, string unit)
        where TUnit : struct, IUnit
    {
        if (range is not { } printed)
            return;
        text.Append(before).Append(LabelFigure.Write(printed.Low.Value, unit));
        if (!printed.IsSingle)
            text.Append(" to ").Append(LabelFigure.Write(printed.High.Value, unit));
    }

    private static string FormWord(Field<SupplyForm> form) => form.State switch
    {
        FieldState.Read => form.Value == SupplyForm.Direct ? "DC" : "AC",
        FieldState.Ambiguous => "AC/DC",
        _ => "",
    };

    private static void AppendPolarity(StringBuilder text, Field<Polarity> polarity)
    {
        if (polarity.State == FieldState.Read)
            Separate(text, ", ").Append(polarity.Value == Polarity.CentreNegative ? "centre negative" : "centre positive");
        else if (polarity.State == FieldState.Ambiguous)
            Separate(text, ", ").Append("centre negative, centre positive");
    }

    private static void AppendPlug(StringBuilder text, Field<Plug> plug)
    {
        if (plug.Value is { } read)
            Separate(text, ", ").Append(read.Name);
        foreach (var candidate in plug.Candidates)
            Separate(text, ", ").Append(candidate.Name);
    }

    private static void AppendRegulation(StringBuilder text, Field<bool> regulated)
    {
        if (regulated.State == FieldState.Read)
            Separate(text, ", ").Append(regulated.Value == true ? "regulated" : "unregulated");
        else if (regulated.State == FieldState.Ambiguous)
            Separate(text, ", ").Append("regulated, unregulated");
    }

    private static StringBuilder Separate(StringBuilder text, string separator) => text.Length == 0 ? text : text.Append(separator);
}
