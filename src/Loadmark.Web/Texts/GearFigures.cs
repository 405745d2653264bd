using Loadmark.Core.Display;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Microsoft.Extensions.Localization;

namespace Loadmark.Web.Texts;

/// <summary>The figures of gear that count for what feeds what, in the order in which they are told.</summary>
internal static class GearFigures
{
    /// <summary>A load's.</summary>
    public static List<ShownFigure> Of(Load load, LoadRating rating, IStringLocalizer<PageText> T)
    {
        var volts = FigureWords.Volts($"{rating.Voltage.Value}", rating.Form);
        List<ShownFigure> figures = [new(volts, rating.Voltage.Origin, T["voltage not known"], T["voltage"])];
        if (!rating.Form.IsKnown)
            figures.Add(new("", null, T["d.c. or a.c. not known"]));
        figures.Add(new($"{rating.Running?.Value}", rating.Running?.Origin, T["draw not known"], T["running draw"]));
        if (load.Start is { } start)
            figures.Add(new(T["starts with {0}", start], Origin.Stated, Title: T["starting draw"]));
        if (rating.Form.Value != SupplyForm.Alternating)
            figures.Add(new(PolarityText.Of(rating.Polarity.Value), rating.Polarity.Origin, T["polarity not known"], T["polarity"]));
        var plug = T["plug {0}", rating.Plug.Value.Name];
        figures.Add(new(plug, rating.Plug.Origin, T["plug not known"], T["plug, outer by inner diameter in mm"]));
        if (rating.Ground is { IsKnown: true, Value: GroundSide.Positive })
            figures.Add(new(T["positive ground"], rating.Ground.Origin));
        if (load.Isolate)
            figures.Add(new(T["needs isolation"], Origin.Stated));
        if (load.Board is { } board)
            figures.Add(new(T["board {0}", board], Origin.Stated));
        if (load.FromLibrary is not null)
            figures.Add(new(T["from the library"], Origin.Stated));
        return figures;
    }

    /// <summary>A supply's as a whole.</summary>
    public static List<ShownFigure> Of(Supply supply, IStringLocalizer<PageText> T)
    {
        var figures = new List<ShownFigure>();
        var isolated = supply.IsolatedAsStated;
        if (supply.Outlets.Count > 1 || isolated is not null)
        {
            var says = isolated == true ? T["isolated outlets"] : T["outlets share a return"];
            figures.Add(new(says, isolated is null ? Origin.Assumed : Origin.Stated));
        }

        if (SupplyRating.Of(supply).Total is { } total)
            figures.Add(new(T["{0} in all", total.Amps?.ToString() ?? FigureDisplay.Printed(total.Watts)], Origin.Stated));
        if (supply.Board is { } board)
            figures.Add(new(T["board {0}", board], Origin.Stated));
        if (supply.FromLibrary is not null)
            figures.Add(new(T["from the library"], Origin.Stated));
        return figures;
    }

    /// <summary>An outlet's.</summary>
    public static List<ShownFigure> Of(OutletRating outlet, IStringLocalizer<PageText> T)
    {
        var figures = new List<ShownFigure>();
        foreach (var mode in outlet.Modes)
        {
            if (mode is { Volts: { } volts, Limit: { } most })
            {
                figures.Add(new($"{FigureWords.Volts($"{volts}", outlet.Form)}, {most.Value}", most.Origin));
                continue;
            }

            var told = FigureWords.Volts($"{mode.Volts}", outlet.Form);
            figures.Add(new(told, mode.Volts is null ? null : Origin.Stated, T["voltage not known"]));
            figures.Add(new($"{mode.Limit?.Value}", mode.Limit?.Origin, T["limit not known"]));
        }

        if (!outlet.Form.IsKnown)
            figures.Add(new("", null, T["d.c. or a.c. not known"]));
        if (outlet.Form.Value != SupplyForm.Alternating && outlet.Polarity is not { IsKnown: true, Value: Polarity.CentreNegative })
            figures.Add(new(PolarityText.Of(outlet.Polarity.Value), outlet.Polarity.Origin, T["polarity not known"]));
        return figures;
    }
}
