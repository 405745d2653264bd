namespace Loadmark.Browser.Tests.House;

/// <summary>How long the tests wait for a condition before they call it failed. Long, because the machine may be shared.</summary>
internal static class Patience
{
    /// <summary>For anything the page does.</summary>
    public static TimeSpan Page { get; } = TimeSpan.FromSeconds(60);

    /// <summary>For the program to begin or to end.</summary>
    public static TimeSpan Program { get; } = TimeSpan.FromSeconds(120);

    /// <summary><see cref="Page"/>, as Playwright counts it.</summary>
    public static float PageMilliseconds => (float)Page.TotalMilliseconds;
}
