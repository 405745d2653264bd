namespace Loadmark.Release.Licences;

/// <summary>An SPDX licence expression: identifiers joined by AND and OR, with parentheses. An exception (WITH) is not read.</summary>
/// <remarks>Source: SPDX specification 2.3, annex D: AND binds closer than OR.</remarks>
public static class LicenceExpression
{
    /// <summary>The licences that one takes a work under.</summary>
    /// <param name="expression">The expression.</param>
    /// <param name="allowed">The identifiers that are allowed.</param>
    /// <returns>The first choice of which all are allowed; null where there is none, or the expression cannot be read.</returns>
    public static IReadOnlyList<string>? Choose(string expression, Func<string, bool> allowed)
    {
        var words = new Queue<string>(expression.Replace("(", " ( ", StringComparison.Ordinal).Replace(")", " ) ", StringComparison.Ordinal)
            .Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return Either(words) is { } choices && words.Count == 0 ? choices.FirstOrDefault(choice => choice.All(allowed)) : null;
    }

    private static List<List<string>>? Either(Queue<string> words)
    {
        if (Both(words) is not { } choices)
            return null;
        while (words.TryPeek(out var word) && word == "OR")
        {
            words.Dequeue();
            if (Both(words) is not { } more)
                return null;
            choices = [.. choices, .. more];
        }

        return choices;
    }

    private static List<List<string>>? Both(Queue<string> words)
    {
        if (One(words) is not { } choices)
            return null;
        while (words.TryPeek(out var word) && word == "AND")
        {
            words.Dequeue();
            if (One(words) is not { } more)
                return null;
            choices = [.. choices.SelectMany(_ => more, static (left, right) => (List<string>)[.. left, .. right])];
        }

        return choices;
    }

    private static List<List<string>>? One(Queue<string> words)
    {
        if (!words.TryDequeue(out var word) || word is "AND" or "OR" or "WITH" or ")")
            return null;
        if (word != "(")
            return [[word]];
        return Either(words) is { } inner && words.TryDequeue(out var end) && end == ")" ? inner : null;
    }
}
