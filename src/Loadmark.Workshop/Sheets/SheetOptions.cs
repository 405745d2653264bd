using Loadmark.Core.Offers;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Paper;

namespace Loadmark.Workshop.Sheets;

/// <summary>How a sheet is made.</summary>
public sealed record SheetOptions
{
    /// <summary>The paper.</summary>
    public PaperSize Paper { get; init; } = PaperSize.A4;

    /// <summary>The parts, each once; null for all that the rig has something to say in.</summary>
    public IReadOnlyList<SheetPart>? Only { get; init; }

    /// <summary>When the sheet is made: equal rigs with an equal time make equal sheets.</summary>
    public required DateTimeOffset Made { get; init; }

    /// <summary>The size of labels.</summary>
    public LabelSize Labels { get; init; } = LabelSize.Common;

    /// <summary>From what cable is cut.</summary>
    public CuttingWishes Cutting { get; init; } = new();

    /// <summary>The price list that what is to be bought is looked up in; null where there is none.</summary>
    public ValueList<Offer>? Prices { get; init; }

    /// <summary>
    /// The text of the rig file, which stands on the sheet as codes so that the sheet restores it; null for no codes.
    /// <see cref="StandAloneText"/> makes one that needs no library.
    /// </summary>
    public string? RigText { get; init; }

    /// <summary>Whom the player is to ask: a name, a number; null leaves a line to write on.</summary>
    public string? Contact { get; init; }
}
