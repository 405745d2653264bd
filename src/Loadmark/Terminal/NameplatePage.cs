using System.Collections.Immutable;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Spectre.Console;

namespace Loadmark.Terminal;

/// <summary>What a nameplate says, field by field: the value, and where it comes from or why there is none.</summary>
internal sealed class NameplatePage
{
    private const int Indent = 2;
    private const int ValueColumn = 15;
    private const int StateColumn = 40;

    private readonly Sheet _sheet;
    private readonly Nameplate _nameplate;

    private NameplatePage(Sheet sheet, Nameplate nameplate) => (_sheet, _nameplate) = (sheet, nameplate);

    /// <summary>Writes the page.</summary>
    public static void Write(Sheet sheet, Nameplate nameplate)
    {
        LabelEcho.Write(sheet, nameplate);
        sheet.BlankLine();
        new NameplatePage(sheet, nameplate).WriteFields();
    }

    private void WriteFields()
    {
        WriteField(
            "supply", _nameplate.Form, static form => form == SupplyForm.Direct ? "direct current (d.c.)" : "alternating current (a.c.)");
        WriteModes(_nameplate.Modes);
        foreach (var group in _nameplate.Outlets)
            WriteOutlets(group);
        if (_nameplate.Modes.IsEmpty && _nameplate.Outlets.IsEmpty)
            NotPrinted("output");
        if (_nameplate.EachOutlet)
            Row("outlets", "several, each as above", Origin.Stated);
        if (_nameplate.Total is { } total)
            Row("in all", total.ToString(), Origin.Stated);

        WriteUnclear("volts", _nameplate.AmbiguousVolts);
        WriteUnclear("amps", _nameplate.AmbiguousAmps);
        WriteUnclear("watts", _nameplate.AmbiguousWatts);
        if (_nameplate.NoLoad is { } unloaded)
            Row("no load", unloaded.ToString(), Origin.Stated);
        WriteField(
            "polarity",
            _nameplate.Polarity,
            static polarity => polarity == Polarity.CentreNegative ? "centre negative" : "centre positive");
        WriteField("plug", _nameplate.Plug, static plug => plug.Name);
        if (_nameplate.Ground.State != FieldState.Absent)
            WriteField("ground", _nameplate.Ground, static side => side == GroundSide.Positive ? "positive" : "negative");
        if (_nameplate.Isolated.State != FieldState.Absent)
            WriteField("isolated", _nameplate.Isolated, static isolated => isolated ? "yes" : "no");
        if (_nameplate.Input is { } input)
            WriteInput(input);
        WriteMains(_nameplate.Mains);

        foreach (var conflict in _nameplate.Conflicts)
            Remark("conflict", conflict);
        if (_nameplate.Unread.Length > 0)
            Remark("not read", Join(_nameplate.Unread, ", ", static unread => $"“{unread.Text}”"));
        if (_nameplate.NotUnderstood != LabelTopics.None)
            Remark("find out", $"{string.Join(", ", TopicWords())}: words about it stand on the label that were not understood");
    }

    private IEnumerable<string> TopicWords()
    {
        if (_nameplate.NotUnderstood.HasFlag(LabelTopics.Form))
            yield return "d.c. or a.c.";
        if (_nameplate.NotUnderstood.HasFlag(LabelTopics.Polarity))
            yield return "polarity";
        if (_nameplate.NotUnderstood.HasFlag(LabelTopics.Ground))
            yield return "ground";
        if (_nameplate.NotUnderstood.HasFlag(LabelTopics.Plug))
            yield return "plug";
        if (_nameplate.NotUnderstood.HasFlag(LabelTopics.Regulation))
            yield return "regulation";
    }

    private void WriteModes(ImmutableArray<Mode> modes)
    {
        for (var index = 0; index < modes.Length; index++)
            WriteMode(modes.Length == 1 ? "" : $" {index + 1}", modes[index]);
    }

    private void WriteOutlets(PrintedOutlets group)
    {
        var own = new List<string>(3);
        if (group.Form.Value is { } form)
            own.Add(form == SupplyForm.Direct ? "d.c." : "a.c.");
        if (group.Polarity.Value is { } polarity)
            own.Add(polarity == Polarity.CentreNegative ? "centre negative" : "centre positive");
        if (group.Isolated.Value is { } isolated)
            own.Add(isolated ? "isolated" : "not isolated");
        var named = group.Ids is { } ids
            ? ids.Replace(",", ", ", StringComparison.Ordinal)
            : group.Count == 1 ? "1, not named" : $"{group.Count}, not named";
        Row(group.Count == 1 && group.Ids is not null ? "outlet" : "outlets", string.Join(", ", [named, .. own]), Origin.Stated);
        WriteModes(group.Modes);
    }

    private void WriteInput(LowVoltageInput input)
    {
        var figures = new List<string>(4);
        if (input.Volts is { } volts)
            figures.Add(volts.ToString());
        if (input.Form.Value is { } form)
            figures.Add(form == SupplyForm.Direct ? "d.c." : "a.c.");
        if (input.Amps is { } amps)
            figures.Add(amps.ToString());
        if (input.Watts is { } watts)
            figures.Add(watts.ToString());
        if (input.VoltAmps is { } apparent)
            figures.Add(apparent.ToString());
        Row("input", string.Join(", ", figures), Origin.Stated);
    }

    private void WriteMode(string number, Mode mode)
    {
        if (mode.Volts is { } volts)
            Row($"volts{number}", volts.ToString(), mode.VoltsPlace is null ? Origin.Derived : Origin.Stated);
        else if (_nameplate.AmbiguousVolts.State == FieldState.Absent)
            NotPrinted($"volts{number}");

        if (mode.Amps is { } amps)
            Row($"amps{number}", mode.AmpsFrom is { } from ? $"{from} to {amps.Value}" : amps.Value.ToString(), amps.Origin);
        else if (_nameplate.AmbiguousAmps.State == FieldState.Absent)
            NotPrinted($"amps{number}");

        if (mode.Watts is { } watts)
            Row($"watts{number}", watts.Value.ToString(), watts.Origin);
        else if (_nameplate.AmbiguousWatts.State == FieldState.Absent && mode.VoltAmps is null)
            NotPrinted($"watts{number}");
        if (mode.VoltAmps is { } apparent)
            Row($"VA{number}", apparent.Value.ToString(), apparent.Origin);

        if (mode.Hertz is { } hertz)
            Row($"hertz{number}", hertz.ToString(), Origin.Stated);
    }

    private void WriteMains(MainsInput? mains)
    {
        if (mains is null)
        {
            NotPrinted("mains input");
            return;
        }

        var figures = new List<string>(4);
        if (mains.Volts is { } volts)
            figures.Add(volts.ToString());
        if (mains.Hertz is { } hertz)
            figures.Add(hertz.ToString());
        if (mains.Amps is { } amps)
            figures.Add(amps.ToString());
        if (mains.Watts is { } watts)
            figures.Add(watts.ToString());
        if (mains.VoltAmps is { } apparent)
            figures.Add(apparent.ToString());
        Row("mains input", string.Join(", ", figures), Origin.Stated);
    }

    private void WriteField<T>(string name, Field<T> field, Func<T, string> word)
        where T : struct
    {
        if (field.Value is { } value)
            Row(name, word(value), Origin.Stated);
        else if (field.State == FieldState.Absent)
            NotPrinted(name);
        else
            WriteUnclear(name, field, word);
    }

    private void WriteUnclear<TUnit>(string name, Field<Quantity<TUnit>> field)
        where TUnit : struct, IUnit
    {
        if (field.State != FieldState.Absent)
            WriteUnclear(name, field, static value => value.ToString());
    }

    private void WriteUnclear<T>(string name, Field<T> field, Func<T, string> word)
        where T : struct
    {
        var printed = field.Place.In(_nameplate.Text);
        if (field.State == FieldState.Ambiguous)
            Row(name, $"{Join(field.Candidates, " or ", word)}?", $"ambiguous: “{printed}”", SheetStyle.Orange);
        else
            Row(name, "?", $"unreadable: “{printed}”", SheetStyle.Orange);
    }

    private void NotPrinted(string name) =>
        _sheet.PadTo(Indent).Put(name, SheetStyle.Faint).PadTo(ValueColumn).Put("not printed", SheetStyle.Faint).EndLine();

    private void Row(string name, string value, Origin origin) => Row(name, value, OriginWords.Of(origin), SheetStyle.Faint);

    private void Row(string name, string value, string state, Style style)
    {
        _sheet.PadTo(Indent).Put(name, SheetStyle.Faint).PadTo(ValueColumn).Wrap(value, ValueColumn, SheetStyle.Strong).Put("  ");
        _sheet.PadTo(Math.Min(StateColumn, _sheet.Width / 2)).Wrap(state, ValueColumn, style).EndLine();
    }

    private void Remark(string name, string text) =>
        _sheet.PadTo(Indent).Put(name, SheetStyle.Orange).PadTo(ValueColumn).Wrap(text, ValueColumn).EndLine();

    private static string Join<T>(ImmutableArray<T> items, string between, Func<T, string> word)
    {
        var words = new string[items.Length];
        for (var index = 0; index < items.Length; index++)
            words[index] = word(items[index]);
        return string.Join(between, words);
    }
}
