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
    public static ValueKind<string?> Text { get; } = new(ValueForm.Text, "a text", ReadText, static text => text);

    /// <summary>What sort of load something is.</summary>
    public static ValueKind<LoadKind?> Kind { get; } = new(
        ValueForm.Text, "a text",
        static (text, key, errors) => ReadText(text, key, errors) is { } kind ? new LoadKind(kind) : null,
        static kind => kind?.Text);

    /// <summary>A plug by its name.</summary>
    public static ValueKind<Plug?> Plug { get; } = new(
        ValueForm.Text, "a text",
        static (text, key, errors) => ReadText(text, key, errors) is { } name ? new Plug(PlugText.Normalise(name)) : null,
        static plug => plug?.Name);

    /// <summary>What is printed on a thing, as it stands, possibly empty.</summary>
    public static ValueKind<Nameplate?> Label { get; } = new(
        ValueForm.Text, "a text", static (text, _, _) => NameplateReader.Read(text.Value), static label => label?.Text);

    /// <summary>What is printed beside an outlet, where an empty text says no more than none.</summary>
    public static ValueKind<Nameplate?> OutletLabel { get; } = Label with
    {
        Write = static label => label is { Text.Length: > 0 } ? label.Text : null,
    };

    /// <summary>A voltage typed beside a label, in the words of a label.</summary>
    public static ValueKind<Nameplate?> Voltage { get; } = new(
        ValueForm.Text, "a voltage such as 7.5 V", Figures.Voltage, static voltage => voltage?.Text);

    /// <summary>The mains input of a supply, in the words of a label.</summary>
    public static ValueKind<Nameplate?> MainsInput { get; } = new(
        ValueForm.Text, "a mains input such as 100-240 V", Figures.MainsInput, static mains => mains?.Text);

    /// <summary>Yes, no or not said.</summary>
    public static ValueKind<bool?> YesNo { get; } = new(
        ValueForm.YesNo, "yes or no", ReadYesNo, static answer => answer switch { true => "true", false => "false", null => null });

    /// <summary>Yes; no where nothing is said.</summary>
    public static ValueKind<bool> Flag { get; } = new(
        ValueForm.YesNo, "yes or no",
        static (text, key, errors) => ReadYesNo(text, key, errors) ?? false,
        static answer => answer ? "true" : null);

    /// <summary>What sort of lead something is; straight where nothing is said, which is written all the same.</summary>
    public static ValueKind<LeadType> LeadType { get; } = new(
        ValueForm.Word, "a word",
        static (text, key, errors) => ReadWord(text, key, errors, RigWords.LeadType) ?? Core.Rigs.LeadType.Straight,
        RigWords.LeadType.WordOf)
    {
        Words = RigWords.LeadType.All,
    };

    /// <summary>What several outlets together can give.</summary>
    public static ValueKind<SupplyTotal?> Total { get; } = new(
        ValueForm.Figure, "a total such as 18 W", Figures.Total, static total => total is null ? null : FigureText.Of(total));

    /// <summary>The size of a conductor.</summary>
    public static ValueKind<Wire?> Wire { get; } = new(
        ValueForm.Figure, "a conductor such as 0.22 mm² or AWG 24", Figures.Conductor,
        static wire => wire is not { } one ? null : one.Gauge is { } gauge ? $"AWG {gauge}" : FigureText.Of(one.Area));

    /// <summary>The mains where a rig is played.</summary>
    public static ValueKind<RigMains?> Mains { get; } = new(
        ValueForm.Figure, "a mains voltage such as 230 V 50 Hz", Figures.Mains,
        static mains => mains is null ? null
            : mains.Hertz is { } hertz ? $"{FigureText.Of(mains.Volts)} {FigureText.Of(hertz)}"
            : FigureText.Of(mains.Volts));

    /// <summary>A share from 0 to below 1.</summary>
    public static ValueKind<decimal?> Share { get; } = new(
        ValueForm.Share, "a share such as 10 %", Figures.Share,
        static share => share is { } one ? $"{(one * 100).ToString("0.##############", CultureInfo.InvariantCulture)} %" : null);

    /// <summary>One quantity with its unit.</summary>
    /// <param name="expected">What is expected, with an example.</param>
    /// <param name="mayBeZero">Whether it may be zero.</param>
    /// <param name="keySaysUnit">Whether the key's name says the unit, so that a bare number will do.</param>
    public static ValueKind<Quantity<TUnit>?> Of<TUnit>(string expected, bool mayBeZero = true, bool keySaysUnit = false)
        where TUnit : struct, IUnit => new(
            keySaysUnit ? ValueForm.FigureOrNumber : ValueForm.Figure, expected,
            (text, key, errors) => Figures.Read<TUnit>(text, key, expected, mayBeZero, keySaysUnit, errors),
            static quantity => quantity is { } one ? FigureText.Of(one) : null);

    /// <summary>A current with how long it lasts.</summary>
    /// <param name="expected">What is expected where something other than a text stands.</param>
    /// <param name="example">A value that shows how it is written.</param>
    public static ValueKind<TimedCurrent?> Timed(string expected, string example) => new(
        ValueForm.Figure, expected,
        (text, key, errors) => Figures.Timed(text, key, example, errors),
        static timed => timed is { } one ? FigureText.Of(one) : null);

    /// <summary>One of a table's words.</summary>
    public static ValueKind<T?> Word<T>(WordTable<T> words)
        where T : struct, Enum => new(
            ValueForm.Word, "a word",
            (text, key, errors) => ReadWord(text, key, errors, words),
            value => value is { } one ? words.WordOf(one) : null)
        {
            Words = words.All,
        };

    /// <summary>A whole number in a range.</summary>
    public static ValueKind<int?> Number(int least, int most) => new(
        ValueForm.Number, "a whole number",
        (text, key, errors) => ReadNumber(text, key, errors, least, most),
        static number => number is { } one ? $"{one}" : null)
    {
        Least = least,
        Most = most,
    };

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

    private static T? ReadWord<T>(ScalarNode text, string key, ErrorList errors, WordTable<T> words)
        where T : struct, Enum
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
