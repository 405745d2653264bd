using Loadmark.Core.Gear;
using Loadmark.Files.Library;
using Loadmark.Storage.Gear;

namespace Loadmark.Workshop.Library;

/// <summary>A piece of gear of the library, with what its text says.</summary>
public sealed class LibraryGear
{
    private readonly Lazy<GearPieceResult> _reading;

    /// <summary>Takes a piece as it is stored.</summary>
    /// <param name="stored">The piece.</param>
    public LibraryGear(StoredGear stored)
    {
        ArgumentNullException.ThrowIfNull(stored);
        Stored = stored;
        _reading = new Lazy<GearPieceResult>(() => GearText.Read(stored.Content.Kind, stored.Content.Tag, stored.Content.Text));
    }

    /// <summary>The piece as it is stored.</summary>
    public StoredGear Stored { get; }

    /// <summary>What the store knows the piece by.</summary>
    public Guid Id => Stored.Id;

    /// <summary>What sort of thing the piece is.</summary>
    public GearKind Kind => Stored.Content.Kind;

    /// <summary>The piece's tag.</summary>
    public string Tag => Stored.Content.Tag;

    /// <summary>The piece's name; empty when it has none.</summary>
    public string Name => Stored.Content.Name;

    /// <summary>The piece as it reads; null when its text, such as that of a later program, cannot be read.</summary>
    public GearPiece? Piece => _reading.Value.Piece;
}
