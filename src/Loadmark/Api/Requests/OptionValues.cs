using System.Globalization;
using Loadmark.Core.Texts;
using Loadmark.Questions;
using Loadmark.Web.Problems;
using Loadmark.Workshop.TypedInput;
using Microsoft.Extensions.Primitives;

namespace Loadmark.Api.Requests;

/// <summary>The options that a request's address carries.</summary>
internal sealed class OptionValues
{
    private const int LongestText = 1000;

    private readonly Dictionary<string, StringValues> _values = new(StringComparer.Ordinal);

    /// <summary>Reads the options of an address.</summary>
    /// <param name="query">The query of the address.</param>
    /// <param name="known">The options that it takes.</param>
    /// <param name="refusal">What is wrong with one; null where nothing is.</param>
    /// <returns>The options; null where something is wrong.</returns>
    public static OptionValues? Read(IQueryCollection query, IReadOnlyList<OptionSpec> known, out Problem? refusal)
    {
        var values = new OptionValues();
        foreach (var (name, given) in query)
        {
            var option = known.FirstOrDefault(option => option.Name == name);
            var complaint = option is null ? Unknown(name, known) : Complaint(option, given);
            if (complaint is not null)
            {
                refusal = new Problem(ProblemKind.BadRequest, complaint);
                return null;
            }

            values._values[name] = given;
        }

        refusal = null;
        return values;
    }

    /// <summary>Whether a flag is set.</summary>
    public bool Has(OptionSpec option) => _values.TryGetValue(option.Name, out var given) && given.ToString() != "false";

    /// <summary>A text; null where it was not given.</summary>
    public string? Text(OptionSpec option) => _values.TryGetValue(option.Name, out var given) ? given.ToString() : null;

    /// <summary>A whole number; null where it was not given. One that is too large is the largest there is.</summary>
    public int? Number(OptionSpec option) =>
        Text(option) is { } given ? (int)Math.Min(ulong.Parse(given, CultureInfo.InvariantCulture), int.MaxValue) : null;

    /// <summary>Texts, in the order given.</summary>
    public IReadOnlyList<string> Texts(OptionSpec option) =>
        _values.TryGetValue(option.Name, out var given) ? [.. given.Select(static text => text ?? "")] : [];

    /// <summary>Names parted by commas, in one option or several.</summary>
    public IReadOnlyList<string> Names(OptionSpec option) => CommaList.Of(Texts(option));

    private static string Unknown(string name, IReadOnlyList<OptionSpec> known)
    {
        var names = known.Select(static option => option.Name).ToList();
        var hint = NearestWord.Find(name, names) is { } nearest
            ? $" Did you mean {nearest}?"
            : names.Count == 0 ? " There is none here." : $" There are: {string.Join(", ", names)}.";
        return $"There is no option '{Shortened(name)}' here.{hint}";
    }

    private static string? Complaint(OptionSpec option, StringValues given)
    {
        if (given.Any(static text => text is { Length: > LongestText }))
            return $"{option.Name}: more than {LongestText} characters.";
        if (option.Kind != OptionKind.Texts && given.Count > 1)
            return $"{option.Name}: given {given.Count} times, and once is enough.";
        return option.Kind switch
        {
            OptionKind.Flag when given.ToString() is not ("" or "true" or "false") =>
                $"{option.Name}: expected true or false, found '{Shortened(given.ToString())}'.",
            OptionKind.Number when !ulong.TryParse(given.ToString(), NumberStyles.None, CultureInfo.InvariantCulture, out _) =>
                $"{option.Name}: expected a whole number from 0, found '{Shortened(given.ToString())}'.",
            OptionKind.Text when option.Words.Count > 0 && !option.Words.Contains(given.ToString(), StringComparer.Ordinal) =>
                $"{option.Name}: expected {string.Join(" or ", option.Words)}, found '{Shortened(given.ToString())}'.",
            _ => null,
        };
    }

    private static string Shortened(string text) => text.Length <= 40 ? text : $"{text.AsSpan(0, 40)}…";
}
