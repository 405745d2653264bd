namespace Loadmark.Api.Requests;

/// <summary>A part of an address that tells which thing is meant.</summary>
/// <param name="Name">The part's name between braces in the address's template.</param>
/// <param name="About">What the part is, in a sentence.</param>
internal sealed record PathParameter(string Name, string About)
{
    /// <summary>The format of the part as OpenAPI names it; null for a mere text.</summary>
    public string? Format { get; init; }

    /// <summary>The words that the part may be; empty where it may be any.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>A value of the part; null for no example.</summary>
    public string? Example { get; init; }
}
