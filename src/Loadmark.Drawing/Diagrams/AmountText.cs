using Loadmark.Core.Checks;
using Loadmark.Core.Display;
using Loadmark.Core.Gear;

namespace Loadmark.Drawing.Diagrams;

/// <summary>Figures in the fewest words.</summary>
public static class AmountText
{
    /// <summary>What is drawn of what an outlet can give.</summary>
    public static string Of(Amps? amount, Amps? limit) => Of(amount is null ? null : FigureDisplay.Said(amount, limit), limit?.ToString());

    /// <summary>What is drawn of what a supply or a bank can give in all.</summary>
    public static string Of(TotalLoading total) => Of(FigureDisplay.SaidTotal(total.Run, total.Limit), total.Limit.ToString());

    /// <summary>"210 of 500 mA" where both have the same unit, else "900 mA of 3 A"; what is not known is "?".</summary>
    public static string Of(string? amount, string? limit)
    {
        if (amount is null)
            return $"{FigureDisplay.Unknown} of {limit ?? FigureDisplay.Unknown}";
        if (limit is null)
            return $"{amount} of ?";

        if (amount.StartsWith("0 ", StringComparison.Ordinal))
            return $"0 of {limit}";

        var space = amount.LastIndexOf(' ');
        return space > 0 && limit.EndsWith(amount[space..], StringComparison.Ordinal)
            ? $"{amount[..space]} of {limit}"
            : $"{amount} of {limit}";
    }

    /// <summary>The one figure of a total: its amps, else its watts.</summary>
    public static decimal ValueOf(SupplyTotal total) => total.Amps?.Value ?? total.Watts?.Value ?? 0;
}
