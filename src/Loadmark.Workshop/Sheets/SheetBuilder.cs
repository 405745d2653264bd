using System.Globalization;
using Loadmark.Core.Checks;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Fonts;
using Loadmark.Drawing.Paper;

namespace Loadmark.Workshop.Sheets;

/// <summary>
/// Sets the sheet that goes with a rig: what a technician tapes into the lid of the case, and what a bench needs to build it.
/// </summary>
public static class SheetBuilder
{
    private static readonly SheetPart[] Order =
    [
        SheetPart.Diagram, SheetPart.Feeds, SheetPart.Leads, SheetPart.Shopping, SheetPart.Findings, SheetPart.StartUp, SheetPart.Codes,
        SheetPart.Player, SheetPart.Labels,
    ];

    private static string ProgramVersion => typeof(SheetBuilder).Assembly.GetName().Version?.ToString(3) ?? "";

    /// <summary>Sets the sheet of a rig.</summary>
    /// <param name="figures">What was computed of it.</param>
    /// <param name="options">How.</param>
    /// <param name="cancellation">Stops what is still computed; what was found by then is set.</param>
    public static PaperDocument Build(SheetFigures figures, SheetOptions options, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(figures);
        ArgumentNullException.ThrowIfNull(options);
        var made = options.Made.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        var composer = new PageComposer(new PageFrame(
            options.Paper,
            figures.Rig.Name,
            $"{SheetCautions.Text} Rig {figures.Version}, sheet made {made} by Loadmark {ProgramVersion}."));
        var lists = SheetLists.Of(figures, options, IsShown, cancellation);
        SheetPart? before = null;
        foreach (var part in Order)
        {
            if (!IsShown(part))
                continue;
            var mayFollow = before is { } last && !StandsAlone(last) && !StandsAlone(part);
            if (mayFollow && (composer.IsMostlyFree || composer.Fits(page => SetWhole(part, page, figures, options, lists))))
                composer.GoOn(TitleOf(part));
            else
                composer.BeginPage(TitleOf(part));
            if (before is null)
                composer.Title(figures.Rig.Name);
            before = part;
            SetWhole(part, composer, figures, options, lists);
        }

        return new PaperDocument
        {
            Title = $"{figures.Rig.Name}: sheet",
            Subject = $"{VerdictSentence.Of(figures.Analysis.Check)} Rig {figures.Version}.",
            Made = options.Made,
            Pages = composer.Pages(),
        };

        bool IsShown(SheetPart part) => options.Only is { } only ? only.Contains(part) : Says(part, figures, options);
    }

    /// <summary>What a part is called on paper.</summary>
    public static string TitleOf(SheetPart part) => part switch
    {
        SheetPart.Diagram => "Single-line diagram",
        SheetPart.Feeds => "Feed schedule",
        SheetPart.Leads => "Lead list",
        SheetPart.Shopping => "Shopping list",
        SheetPart.Labels => "Labels",
        SheetPart.Findings => "Findings",
        SheetPart.StartUp => "Switch-on",
        SheetPart.Player => "For the player",
        SheetPart.Codes => "The rig file as codes",
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "There is no such part."),
    };

    /// <summary>The characters of a rig's names that the typeface lacks, with the first text that has each: they show as boxes.</summary>
    public static IReadOnlyList<(string Character, string Text)> MissingCharacters(Rig rig)
    {
        ArgumentNullException.ThrowIfNull(rig);
        return
        [
            .. Texts(rig).SelectMany(static text => PaperFonts.MissingIn(text).Select(rune => (Character: rune.ToString(), Text: text)))
                .DistinctBy(static one => one.Character),
        ];
    }

    /// <summary>Whether a part is handed out or cut up by itself, so that no other stands on its page.</summary>
    private static bool StandsAlone(SheetPart part) => part is SheetPart.Labels or SheetPart.Player;

    private static void SetWhole(
        SheetPart part, PageComposer composer, SheetFigures figures, SheetOptions options, SheetLists lists)
    {
        composer.Heading(TitleOf(part));
        Set(part, composer, figures, options, lists);
    }

    private static bool Says(SheetPart part, SheetFigures figures, SheetOptions options) => part switch
    {
        SheetPart.Leads or SheetPart.Labels => figures.Leads.Count > 0,
        SheetPart.Shopping => options.Prices is not null || figures.Rig.ToBuy.Any(),
        SheetPart.StartUp or SheetPart.Player => figures.Analysis.Wired.Feeds.Count > 0,
        SheetPart.Codes => options.RigText is not null,
        _ => true,
    };

    private static void Set(
        SheetPart part, PageComposer composer, SheetFigures figures, SheetOptions options, SheetLists lists)
    {
        switch (part)
        {
            case SheetPart.Diagram:
                DiagramPages.Set(composer, figures);
                break;
            case SheetPart.Feeds:
                FeedSchedule.Set(composer, figures);
                break;
            case SheetPart.Leads:
                LeadPages.Set(composer, figures, lists.Cuts, options.Cutting);
                break;
            case SheetPart.Shopping:
                ShoppingPages.Set(composer, figures, lists, options);
                break;
            case SheetPart.Labels:
                LabelPages.Set(composer, figures, options.Labels);
                break;
            case SheetPart.Findings:
                FindingsPages.Set(composer, figures);
                break;
            case SheetPart.StartUp:
                StartUpPages.Set(composer, figures);
                break;
            case SheetPart.Codes:
                CodePages.Set(composer, figures, options);
                break;
            default:
                PlayerPage.Set(composer, figures, options);
                break;
        }
    }

    private static IEnumerable<string> Texts(Rig rig) =>
    [
        rig.Name,
        .. rig.Loads.Items.SelectMany(static load => (string?[])[load.Id, load.Name, load.Kind?.Text]).OfType<string>(),
        .. rig.Supplies.Items.SelectMany(static supply => (string?[])[supply.Id, supply.Name]).OfType<string>(),
        .. rig.Supplies.Items.SelectMany(static supply => supply.Outlets.Items).Select(static outlet => outlet.Id),
        .. rig.Leads.Items.Select(static lead => lead.Id),
        .. rig.Signal,
    ];
}
