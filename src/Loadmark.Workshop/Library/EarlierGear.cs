using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Library;
using Loadmark.Files.Parsing;

namespace Loadmark.Workshop.Library;

/// <summary>The library as it would be with one piece as it was earlier.</summary>
internal sealed class EarlierGear(IGearLookup library, GearPiece piece) : IGearLookup
{
    /// <inheritdoc/>
    public Load? FindLoad(string tag) =>
        piece.Load is { } load && GearTag.KeyOf(tag) == GearTag.KeyOf(load.Id) ? load : library.FindLoad(tag);

    /// <inheritdoc/>
    public Supply? FindSupply(string tag) =>
        piece.Supply is { } supply && GearTag.KeyOf(tag) == GearTag.KeyOf(supply.Id) ? supply : library.FindSupply(tag);

    /// <inheritdoc/>
    public IReadOnlyList<string> Near(GearKind kind, string tag) => library.Near(kind, tag);
}
