using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;

namespace Loadmark.Files.Parsing;

/// <summary>The gear that rig files take <c>from: library</c>. Asked from several threads at once.</summary>
public interface IGearLookup
{
    /// <summary>The load that has a tag, capitals aside, with its tag as the library has it; null when none has.</summary>
    /// <param name="tag">The tag.</param>
    Load? FindLoad(string tag);

    /// <summary>The supply that has a tag, capitals aside, with its tag as the library has it; null when none has.</summary>
    /// <param name="tag">The tag.</param>
    Supply? FindSupply(string tag);

    /// <summary>The tags most like one that nothing has, for a suggestion; empty when none is like it.</summary>
    /// <param name="kind">What sort of thing is looked for.</param>
    /// <param name="tag">The tag.</param>
    IReadOnlyList<string> Near(GearKind kind, string tag);
}
