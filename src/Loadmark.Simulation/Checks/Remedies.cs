namespace Loadmark.Simulation.Checks;

/// <summary>Writes what would mend something.</summary>
internal static class Remedies
{
    /// <summary>Any one of the ways that were found, each of which was tried; else what to do without.</summary>
    public static string Text(IEnumerable<string?> ways, string otherwise)
    {
        var found = ways.OfType<string>().ToList();
        return found switch
        {
            [] => otherwise,
            [var only] => $"This mends it (tried): {only}.",
            _ => $"Any one of these mends it (tried): {string.Join("; ", found)}.",
        };
    }
}
