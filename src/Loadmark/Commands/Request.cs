namespace Loadmark.Commands;

/// <summary>What the user asked for on the command line.</summary>
internal abstract record Request
{
    /// <summary>Check rigs as wired.</summary>
    /// <param name="Rigs">The paths as typed, at least one.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record Check(IReadOnlyList<string> Rigs, bool Json) : Request;

    /// <summary>Read nameplates.</summary>
    /// <param name="Texts">The texts as typed, at least one; <c>-</c> stands for the lines of standard input.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record Read(IReadOnlyList<string> Texts, bool Json) : Request;

    /// <summary>Plan the wiring of a rig.</summary>
    /// <param name="Rig">The path as typed.</param>
    /// <param name="Only">The supplies that may be used; empty for all.</param>
    /// <param name="WriteTo">The file to write the rig with its planned wiring to; null to write none.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record Plan(string Rig, IReadOnlyList<string> Only, string? WriteTo, bool Json) : Request;

    /// <summary>Choose supplies to buy.</summary>
    /// <param name="Rig">The path of the rig as typed.</param>
    /// <param name="Prices">The path of the price list as typed.</param>
    /// <param name="Room">The nameplates of loads to come, as typed.</param>
    /// <param name="Only">The supplies of the rig that may be used; empty for all.</param>
    /// <param name="All">Whether every option is shown with its wiring.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record Buy(string Rig, string Prices, IReadOnlyList<string> Room, IReadOnlyList<string> Only, bool All, bool Json) : Request;

    /// <summary>Explain how the program is used.</summary>
    internal sealed record Help(Topic Topic) : Request;

    /// <summary>Tell the program's version.</summary>
    internal sealed record Version : Request;

    /// <summary>Something that cannot be read.</summary>
    /// <param name="Topic">The command it was meant for.</param>
    /// <param name="Complaint">What is wrong, in a sentence or two.</param>
    internal sealed record Wrong(Topic Topic, string Complaint) : Request;
}
