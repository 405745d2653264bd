namespace Loadmark.Tests;

/// <summary>A rig file of the least that can be wired, with a comment in it and a feed that does not name its outlet.</summary>
internal static class SmallBoard
{
    /// <summary>The file.</summary>
    public const string Text = """
        rig: Small board
        loads:
          drive-3: 9V DC 12mA centre negative   # the old one
        supplies:
          adaptor: 9V DC 500mA centre negative
        wired:
          - { from: adaptor, to: drive-3 }

        """;

    /// <summary>The file with a plan written into it: the same wiring, its outlet named, and all else as it was.</summary>
    public static string Planned { get; } = Text.Replace("{ from: adaptor, to: drive-3 }", "{from: adaptor/1, to: drive-3}", StringComparison.Ordinal);
}
