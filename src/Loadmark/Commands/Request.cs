namespace Loadmark.Commands;

/// <summary>What the user asked for on the command line.</summary>
internal abstract record Request
{
    /// <summary>Open the page.</summary>
    /// <param name="Data">The folder to keep rigs in, as typed; null where none was.</param>
    /// <param name="Port">The port to try first; null where none was typed.</param>
    /// <param name="OpensBrowser">Whether to open it in a browser.</param>
    internal sealed record Page(string? Data, int? Port, bool OpensBrowser) : Request;

    /// <summary>Check rigs as wired.</summary>
    /// <param name="Rigs">The paths as typed, at least one.</param>
    /// <param name="AlsoStartUp">Whether the first seconds are computed in any case.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record Check(IReadOnlyList<string> Rigs, bool AlsoStartUp, bool Json) : Request;

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

    /// <summary>Compute the steady state of a rig.</summary>
    /// <param name="Rig">The path as typed.</param>
    /// <param name="Spread">How to sample it; null where that was not asked.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record Settle(string Rig, Sampling? Spread, bool Json) : Request;

    /// <summary>Compute the first seconds of a rig.</summary>
    /// <param name="Rig">The path as typed.</param>
    /// <param name="Csv">The file to write the waveforms to; null to write none.</param>
    /// <param name="Spread">How to sample it; null where that was not asked.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record StartUp(string Rig, string? Csv, Sampling? Spread, bool Json) : Request;

    /// <summary>Write the circuit of a rig for a SPICE program.</summary>
    /// <param name="Rig">The path as typed.</param>
    /// <param name="Out">The file to write to; null for standard output.</param>
    /// <param name="Steady">Whether for the steady state; else for the first seconds.</param>
    internal sealed record Netlist(string Rig, string? Out, bool Steady) : Request;

    /// <summary>Copy all that is kept to a file.</summary>
    /// <param name="File">The file as typed.</param>
    /// <param name="Force">Whether a file of that name is replaced.</param>
    /// <param name="Data">The folder that rigs are kept in, as typed; null where none was.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record Backup(string File, bool Force, string? Data, bool Json) : Request;

    /// <summary>Put a backup in the place of all that is kept.</summary>
    /// <param name="File">The backup as typed.</param>
    /// <param name="Data">The folder that rigs are kept in, as typed; null where none was.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record Restore(string File, string? Data, bool Json) : Request;

    /// <summary>Explain how the program is used.</summary>
    internal sealed record Help(Topic Topic) : Request;

    /// <summary>Tell the program's version.</summary>
    internal sealed record Version : Request;

    /// <summary>Something that cannot be read.</summary>
    /// <param name="Topic">The command it was meant for.</param>
    /// <param name="Complaint">What is wrong, in a sentence or two.</param>
    internal sealed record Wrong(Topic Topic, string Complaint) : Request;
}
