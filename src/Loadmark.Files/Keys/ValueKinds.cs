using System.Globalization;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Rigs;
using Loadmark.Core.Texts;
using Loadmark.Files.Errors;
using Loadmark.Files.Texts;
using Loadmark.Files.Trees;
using Loadmark.Files.Values;

namespace Loadmark.Files.Keys;

/// <summary>The kinds of values that a rig file holds.</summary>
internal static class ValueKinds
{
    /// <summary>A text, trimmed.</summary>
    public static ValueKind Text { get; } = new(ValueForm.Text, "a text", ReadText, static text => (string)text);

    /// <summary>What sort of load something is.</summary>
    public static ValueKind Kind { get; } = Text with
    {
        Read = static (text, key, errors) => ReadText(text, key, errors) is { } kind ? new LoadKind(kind) : null,
        Write = static kind => ((LoadKind)kind).Text,
    };

    /// <summary>A plug by its name.</summary>
    public static ValueKind Plug { get; } = Text with
    {
        Read = static (text, key, errors) => ReadText(text, key, errors) is { } name ? new Plug(PlugText.Normalise(name)) : null,
        Write = static plug => ((Plug)plug).Name,
    };

    /// <summary>What is printed on a thing, as it stands, possibly empty.</summary>
    public static ValueKind Label { get; } = new(
        ValueForm.Text, "a text", static (text, _, _) => NameplateReader.Read(text.Value), WriteLabel);

    /// <summary>What is printed beside an outlet, where an empty text says no more than none.</summary>
    public static ValueKind OutletLabel { get; } =
        Label with { Write = static label => WriteLabel(label) is { Length: > 0 } text ? text : null };

    /// <summary>A voltage typed beside a label, in the words of a label.</summary>
    public static ValueKind Voltage { get; } = new(ValueForm.Text, "a voltage such as 7.5 V", QuantityParser.Voltage, WriteLabel);

    /// <summary>The mains input of a supply, in the words of a label.</summary>
    public static ValueKind MainsInput { get; } = new(
        ValueForm.Text, "a mains input such as 100-240 V", QuantityParser.MainsInput, WriteLabel);

    /// <summary>Yes or no.</summary>
    public static ValueKind YesNo { get; } = new(
        ValueForm.YesNo, "yes or no", static (text, key, errors) => ReadYesNo(text, key, errors), static answer => (bool)answer
            ? "true"
            : "false");

    /// <summary>Yes or no, where no says no more than nothing.</summary>
    public static ValueKind Flag { get; } = YesNo with { Write = static answer => (bool)answer ? "true" : null };

    /// <summary>What several outlets together can give.</summary>
    public static ValueKind Total { get; } = new(
        ValueForm.Figure, "a total such as 18 W", QuantityParser.Total, static total => QuantityWriter.Of((SupplyTotal)total));

    /// <summary>The size of a conductor.</summary>
    public static ValueKind Wire { get; } = new(
        ValueForm.Figure, "a conductor such as 0.22 mm² or AWG 24",
        static (text, key, errors) => QuantityParser.Conductor(text, key, errors),
        static wire => ((Wire)wire).Gauge is { } gauge ? $"AWG {gauge}" : QuantityWriter.Of(Unit.SquareMetre, ((Wire)wire).Area));

    /// <summary>The mains where a rig is played.</summary>
    public static ValueKind Mains { get; } = new(
        ValueForm.Figure, "a mains voltage such as 230 V 50 Hz", QuantityParser.Mains, static mains => QuantityWriter.Of((RigMains)mains));

    /// <summary>A share from 0 to below 1.</summary>
    public static ValueKind Share { get; } = new(
        ValueForm.Share, "a share such as 10 %",
        static (text, key, errors) => QuantityParser.Share(text, key, errors),
        static share => $"{((decimal)share * 100).ToString("0.##############", CultureInfo.InvariantCulture)} %");

    /// <summary>One quantity with its unit.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="expected">What is expected, with an example.</param>
    /// <param name="mayBeZero">Whether it may be zero.</param>
    /// <param name="keySaysUnit">Whether the key's name says the unit, so that a bare number will do.</param>
    public static ValueKind Of(Unit unit, string expected, bool mayBeZero = true, bool keySaysUnit = false) => new(
        keySaysUnit ? ValueForm.FigureOrNumber : ValueForm.Figure, expected,
        (text, key, errors) => QuantityParser.Read(unit, text, key, expected, mayBeZero, keySaysUnit, errors),
        quantity => QuantityWriter.Of(unit, quantity));

    /// <summary>A current with how long it lasts.</summary>
    /// <param name="expected">What is expected where something other than a text stands.</param>
    /// <param name="example">A value that shows how it is written.</param>
    public static ValueKind Timed(string expected, string example) => new(
        ValueForm.Figure, expected,
        (text, key, errors) => QuantityParser.Timed(text, key, example, errors),
        static timed => QuantityWriter.Of((TimedCurrent)timed));

    /// <summary>One of a table's words.</summary>
    public static ValueKind Word(WordTable words) => new(
        ValueForm.Word, "a word", (text, key, errors) => ReadWord(text, key, errors, words), words.WordOf)
    {
        Words = words.All,
    };

    /// <summary>A whole number in a range.</summary>
    public static ValueKind Number(int least, int most) => new(
        ValueForm.Number, "a whole number",
        (text, key, errors) => ReadNumber(text, key, errors, least, most),
        static number => ((int)number).ToString(CultureInfo.InvariantCulture))
    {
        Least = least,
        Most = most,
    };

    private static string? WriteLabel(object label) => ((Nameplate)label).Text;

    private static string? ReadText(ScalarNode text, string key, ErrorList errors)
    {
        if (!string.IsNullOrWhiteSpace(text.Value))
            return text.Value.Trim();
        errors.Expected(text.Start, key, "a text", text.Value, "it is empty; leave the key out instead");
        return null;
    }

    private static bool? ReadYesNo(ScalarNode text, string key, ErrorList errors)
    {
        if (YesNoText.Read(text.Value) is { } answer)
            return answer;
        errors.Expected(text.Start, key, "yes or no", text.Value);
        return null;
    }

    private static object? ReadWord(ScalarNode text, string key, ErrorList errors, WordTable words)
    {
        if (words.Find(text.Value) is { } value)
            return value;
        var nearest = errors.IsFull ? null : NearestWord.Find(text.Value, words.All);
        errors.Expected(text.Start, key, $"one of {string.Join(", ", words.Canonical)}", text.Value, null, nearest);
        return null;
    }

    private static int? ReadNumber(ScalarNode text, string key, ErrorList errors, int least, int most)
    {
        if (PlainNumber.TryWhole(text.Value.AsSpan().Trim(), out var number) && number >= least && number <= most)
            return number;
        errors.Expected(text.Start, key, $"a whole number from {least} to {most}", text.Value);
        return null;
    }
}
