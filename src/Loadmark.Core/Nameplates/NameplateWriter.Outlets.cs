using System.Text;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates.Parsing;

namespace Loadmark.Core.Nameplates;

/// <content>Inputs at low voltage, groups of outlets, totals, ground and isolation.</content>
public static partial class NameplateWriter
{
    /// <summary>
    /// Writes the label of one outlet of a group: its modes, and the form, polarity and isolation printed for it or else for the whole
    /// supply, with the supply's plug, regulation and ground.
    /// </summary>
    /// <param name="group">The group of outlets.</param>
    /// <param name="of">The label the group stands on.</param>
    /// <example><c>9V DC 0.12A, centre negative, isolated</c>.</example>
    /// <exception cref="ArgumentNullException"><paramref name="group"/> or <paramref name="of"/> is null.</exception>
    public static string Write(PrintedOutlets group, Nameplate of)
    {
        ArgumentNullException.ThrowIfNull(group);
        ArgumentNullException.ThrowIfNull(of);

        // What was not understood on the label at large may speak of this outlet too, unless the group says it in words that were.
        var understood = (group.Form.State == FieldState.Absent ? LabelTopics.None : LabelTopics.Form)
            | (group.Polarity.State == FieldState.Absent ? LabelTopics.None : LabelTopics.Polarity);
        return Write(new Nameplate("")
        {
            Form = group.Form.State == FieldState.Absent ? of.Form : group.Form,
            Modes = group.Modes,
            Polarity = group.Polarity.State == FieldState.Absent ? of.Polarity : group.Polarity,
            Plug = of.Plug,
            Regulated = of.Regulated,
            Ground = of.Ground,
            Isolated = group.Isolated.State == FieldState.Absent ? of.Isolated : group.Isolated,
            NotUnderstood = of.NotUnderstood & ~understood,
            Derived = of.Derived,
        });
    }

    private static void AppendInput(StringBuilder text, LowVoltageInput input)
    {
        Separate(text, " ").Append("INPUT");
        if (input.Choices.IsEmpty)
            AppendRange(text, " ", input.Volts, "V");
        foreach (var choice in input.Choices)
            AppendRange<Volt>(text, text[^1] == 'T' ? " " : "/", choice, "V");
        if (FormWord(input.Form) is { Length: > 0 } form)
            text.Append(' ').Append(form);
        if (input.Amps is { } amps)
            text.Append(' ').Append(LabelFigure.Write(amps.Value, "A"));
        if (input.Watts is { } watts)
            text.Append(' ').Append(LabelFigure.Write(watts.Value, "W"));
        if (input.VoltAmps is { } voltAmps)
            text.Append(' ').Append(LabelFigure.Write(voltAmps.Value, "VA"));
    }

    private static void AppendOutlets(StringBuilder text, PrintedOutlets group, Nameplate of)
    {
        var words = group.Ids is { } ids
            ? $"OUTPUTS {ids.Replace(",", ", ", StringComparison.Ordinal)}: "
            : group.Count == 1 ? "1 OUTPUT: " : $"{group.Count} OUTPUTS: ";
        Separate(text, "; ").Append(words);

        // A frequency alone would make the outlets alternating.
        var form = FormWord(
            group.Form.State == FieldState.Absent && group.Modes.Any(mode => mode.Hertz is not null) ? of.Form : group.Form);
        for (var i = 0; i < group.Modes.Length; i++)
        {
            // A figure without a voltage would join the mode before it; the same ids again keep them apart.
            var loose = IsLoose(group.Modes[i], of.Derived.Contains("volts"));
            if (i > 0)
                text.Append(loose && group.Ids is not null ? $"; {words}" : "; ");
            AppendMode(text, group.Modes[i], i == 0 ? form : "", !loose);
        }

        AppendPolarity(text, group.Polarity);
        AppendIsolation(text, group.Isolated);
    }

    private static void AppendTotal(StringBuilder text, SupplyTotal total)
    {
        if (total.Amps is { } amps)
            Separate(text, "; ").Append("TOTAL ").Append(LabelFigure.Write(amps.Value, "A"));
        if (total.Watts is { } watts)
            Separate(text, "; ").Append("TOTAL ").Append(LabelFigure.Write(watts.Value, "W"));
    }

    private static void AppendGround(StringBuilder text, Field<GroundSide> ground)
    {
        if (ground.State == FieldState.Read)
            Separate(text, ", ").Append(ground.Value == GroundSide.Positive ? "positive ground" : "negative ground");
        else if (ground.State == FieldState.Ambiguous)
            Separate(text, ", ").Append("negative ground, positive ground");
    }

    private static void AppendIsolation(StringBuilder text, Field<bool> isolated)
    {
        if (isolated.State == FieldState.Read)
            Separate(text, ", ").Append(isolated.Value == true ? "isolated" : "not isolated");
        else if (isolated.State == FieldState.Ambiguous)
            Separate(text, ", ").Append("isolated, not isolated");
    }

    /// <summary>A topic's word with a question mark says that something is printed of it that was not understood.</summary>
    private static void AppendNotUnderstood(StringBuilder text, LabelTopics topics)
    {
        ReadOnlySpan<(LabelTopics Topic, string Word)> words =
        [
            (LabelTopics.Form, "form?"), (LabelTopics.Polarity, "polarity?"), (LabelTopics.Ground, "ground?"),
            (LabelTopics.Plug, "plug?"), (LabelTopics.Regulation, "regulation?"),
        ];
        foreach (var (topic, word) in words)
        {
            if (topics.HasFlag(topic))
                Separate(text, ", ").Append(word);
        }
    }
}
