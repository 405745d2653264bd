using Loadmark.Core.Gear;
using Loadmark.Serving.Logs;
using Loadmark.Sheets;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Commands;

/// <summary>What the user asked for on the command line.</summary>
internal abstract record Request
{
    /// <summary>The folder that rigs and gear are kept in, as typed; null where none was.</summary>
    public string? Data { get; init; }

    /// <summary>Open the page.</summary>
    /// <param name="Port">The port to try first; null where none was typed.</param>
    /// <param name="OpensBrowser">Whether to open it in a browser.</param>
    /// <param name="Log">How its log is written.</param>
    internal sealed record Page(int? Port, bool OpensBrowser, LogOptions Log) : Request;

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
    /// <param name="WriteTo">The file to write the rig with its planned wiring to, <c>-</c> for standard output in place of the answer;
    /// null to write none.</param>
    /// <param name="Force">Whether a file of that name is replaced.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record Plan(string Rig, IReadOnlyList<string> Only, string? WriteTo, bool Force, bool Json) : Request;

    /// <summary>Choose supplies to buy.</summary>
    /// <param name="Rig">The path of the rig as typed.</param>
    /// <param name="Prices">The path of the price list as typed.</param>
    /// <param name="Room">The nameplates of loads to come, as typed.</param>
    /// <param name="Only">The supplies of the rig that may be used; empty for all.</param>
    /// <param name="All">Whether every option is shown with its wiring.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record Buy(
        string Rig, string Prices, IReadOnlyList<string> Room, IReadOnlyList<string> Only, bool All, bool Json) : Request;

    /// <summary>Compute the steady state of a rig.</summary>
    /// <param name="Rig">The path as typed.</param>
    /// <param name="Spread">How to sample it; null where that was not asked.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record Settle(string Rig, Sampling? Spread, bool Json) : Request;

    /// <summary>Compute the first seconds of a rig.</summary>
    /// <param name="Rig">The path as typed.</param>
    /// <param name="Csv">The file to write the waveforms to; null to write none.</param>
    /// <param name="Force">Whether a file of that name is replaced.</param>
    /// <param name="Spread">How to sample it; null where that was not asked.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record StartUp(string Rig, string? Csv, bool Force, Sampling? Spread, bool Json) : Request;

    /// <summary>Write the circuit of a rig for a SPICE program.</summary>
    /// <param name="Rig">The path as typed.</param>
    /// <param name="Out">The file to write to; null for standard output.</param>
    /// <param name="Force">Whether a file of that name is replaced.</param>
    /// <param name="Steady">Whether for the steady state; else for the first seconds.</param>
    internal sealed record Netlist(string Rig, string? Out, bool Force, bool Steady) : Request;

    /// <summary>Copy all that is kept to a file.</summary>
    /// <param name="File">The file as typed.</param>
    /// <param name="Force">Whether a file of that name is replaced.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record Backup(string File, bool Force, bool Json) : Request;

    /// <summary>Put a backup in the place of all that is kept.</summary>
    /// <param name="File">The backup as typed.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record Restore(string File, bool Json) : Request;

    /// <summary>List gear of the library.</summary>
    /// <param name="Words">What to look for; empty for all.</param>
    /// <param name="Kind">Only gear of this kind; null for all.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record GearList(string Words, GearKind? Kind, bool Json) : Request;

    /// <summary>Show one piece of gear.</summary>
    /// <param name="Tag">Its tag as typed.</param>
    /// <param name="Kind">Its kind; null where none was typed.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record GearShow(string Tag, GearKind? Kind, bool Json) : Request;

    /// <summary>Add gear to the library: a piece with what is printed on it, or all of a rig.</summary>
    /// <param name="Tag">Its tag; null when it comes from a rig.</param>
    /// <param name="Label">What is printed on it; null when it comes from a rig.</param>
    /// <param name="Kind">Its kind; null where none was typed. Of a rig only gear of this kind is taken.</param>
    /// <param name="Name">Its name; null where none was typed.</param>
    /// <param name="Words">The words that it is filed under, as typed.</param>
    /// <param name="From">The path of the rig; null when it comes from none.</param>
    /// <param name="Take">The tags of what is to be taken though the library says otherwise.</param>
    /// <param name="TakeAll">Whether all is to be taken though the library says otherwise.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record GearAdd(
        string? Tag,
        string? Label,
        GearKind? Kind,
        string? Name,
        string Words,
        string? From,
        IReadOnlyList<string> Take,
        bool TakeAll,
        bool Json) : Request;

    /// <summary>Add a reading of a load.</summary>
    /// <param name="Tag">Its tag.</param>
    /// <param name="Run">The running current as typed; null for none.</param>
    /// <param name="Start">The starting current as typed; null for none.</param>
    /// <param name="Meter">The meter's accuracy as typed; null where none was.</param>
    /// <param name="Note">What there is to say of it; null for nothing.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record GearMeasure(string Tag, string? Run, string? Start, string? Meter, string? Note, bool Json) : Request;

    /// <summary>Take a file of gear into the library.</summary>
    /// <param name="File">Its path.</param>
    /// <param name="Take">The tags of what is to be taken though the library says otherwise.</param>
    /// <param name="TakeAll">Whether all is to be taken though the library says otherwise.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record GearImport(string File, IReadOnlyList<string> Take, bool TakeAll, bool Json) : Request;

    /// <summary>Write the library to a file.</summary>
    /// <param name="File">Its path.</param>
    /// <param name="Kind">Only gear of this kind; null for all.</param>
    /// <param name="Force">Whether a file of that name is replaced.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record GearExport(string File, GearKind? Kind, bool Force, bool Json) : Request;

    /// <summary>List the rigs that are kept.</summary>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record RigsList(bool Json) : Request;

    /// <summary>Keep rig files.</summary>
    /// <param name="Files">Their paths, at least one.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record RigsImport(IReadOnlyList<string> Files, bool Json) : Request;

    /// <summary>Write a rig that is kept to a file.</summary>
    /// <param name="Rig">Its name or id, as typed.</param>
    /// <param name="File">The path of the file.</param>
    /// <param name="IsLinked">Whether it goes on taking gear from the library; else what it takes is written into it.</param>
    /// <param name="Force">Whether a file of that name is replaced.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record RigsExport(string Rig, string File, bool IsLinked, bool Force, bool Json) : Request;

    /// <summary>Find the rigs that a change of a piece of gear means something to.</summary>
    /// <param name="Tag">Its tag.</param>
    /// <param name="Kind">Its kind; null where none was typed.</param>
    /// <param name="Json">Whether to answer in JSON.</param>
    internal sealed record RigsAffected(string Tag, GearKind? Kind, bool Json) : Request;

    /// <summary>Explain how the program is used.</summary>
    internal sealed record Help(Topic Topic) : Request;

    /// <summary>Tell the program's version.</summary>
    internal sealed record Version : Request;

    /// <summary>Something that cannot be read.</summary>
    /// <param name="Topic">The command it was meant for.</param>
    /// <param name="Complaint">What is wrong, in a sentence or two.</param>
    internal sealed record Wrong(Topic Topic, string Complaint) : Request;
}
