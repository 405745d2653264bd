using System.Collections.Immutable;
using System.Text;

namespace Loadmark.Files.Errors;

/// <summary>Collects the errors of one file, up to a limit; the rest are counted.</summary>
/// <param name="file">The file's name.</param>
internal sealed class ErrorList(string file)
{
    /// <summary>How many errors are told in full; one more then says how many were left out.</summary>
    public const int Most = 50;

    private const int LongestQuote = 60;

    private readonly ImmutableArray<FileError>.Builder _errors = ImmutableArray.CreateBuilder<FileError>();
    private int _more;
    private (Spot? At, bool IsThere) _firstMore;

    /// <summary>Whether there is any error.</summary>
    public bool Any => _errors.Count > 0;

    /// <summary>Whether further errors are only counted, so that looking for suggestions is wasted time.</summary>
    public bool IsFull => _errors.Count >= Most;

    /// <summary>A piece of the file as messages show it: one line, not too long, without control characters.</summary>
    public static string Quote(string text)
    {
        var builder = new StringBuilder(Math.Min(text.Length, LongestQuote) + 1);
        foreach (var character in text)
        {
            if (builder.Length >= LongestQuote)
            {
                if (char.IsHighSurrogate(builder[^1]))
                    builder.Length--;
                return builder.Append('…').ToString();
            }

            builder.Append(char.IsControl(character) || character is '\u2028' or '\u2029' ? ' ' : character);
        }

        return builder.ToString();
    }

    /// <summary>Adds an error.</summary>
    /// <param name="at">Where; null for the file as a whole.</param>
    /// <param name="message">What is wrong.</param>
    /// <param name="found">What stands there; null where it is not one piece of text.</param>
    /// <param name="expected">What was expected; null for nothing particular.</param>
    /// <param name="suggestion">The nearest right word; null for none.</param>
    public void Add(Spot? at, string message, string? found = null, string? expected = null, string? suggestion = null)
    {
        if (IsFull)
        {
            _more++;
            if (!_firstMore.IsThere)
                _firstMore = (at, true);
            return;
        }

        _errors.Add(ErrorAt(at, message) with
        {
            Found = found is null ? null : Quote(found),
            Expected = expected,
            Suggestion = suggestion,
        });
    }

    /// <summary>Adds "expected …, found …".</summary>
    public void Expected(Spot at, string key, string expected, string found, string? because = null, string? suggestion = null)
    {
        var tail = because is null ? "" : $"; {because}";
        var hint = suggestion is null ? "" : $"; did you mean '{suggestion}'?";
        Add(at, $"{Quote(key)}: expected {expected}, found \"{Quote(found)}\"{tail}{hint}", found, expected, suggestion);
    }

    /// <summary>Adds "expected …, found a list".</summary>
    /// <param name="at">Where the value begins.</param>
    /// <param name="form">What stands there: "a list".</param>
    /// <param name="key">The key whose value it is.</param>
    /// <param name="expected">What was expected.</param>
    public void ExpectedForm(Spot at, string form, string key, string expected) =>
        Add(at, $"{Quote(key)}: expected {expected}, found {form}", form, expected);

    /// <summary>All errors, and one more that counts those past the limit.</summary>
    public ImmutableArray<FileError> ToArray()
    {
        // The readers go by kinds of gear, people from top to bottom.
        ImmutableArray<FileError> errors = [.. _errors.OrderBy(error => error.Line).ThenBy(error => error.Column)];
        return _firstMore.IsThere ? errors.Add(ErrorAt(_firstMore.At, $"and {_more} more; mend the ones above first")) : errors;
    }

    private FileError ErrorAt(Spot? at, string message) => new(file, at?.Line ?? 1, at?.Column ?? 1, message) { IsOfWhole = at is null };
}
