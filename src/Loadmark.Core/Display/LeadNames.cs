using Loadmark.Core.Rigs;

namespace Loadmark.Core.Display;

/// <summary>What leads are called in sentences.</summary>
public static class LeadNames
{
    /// <summary>What a lead of a type is called: "reversing lead".</summary>
    public static string Of(LeadType type) => type switch
    {
        LeadType.Straight => "straight lead",
        LeadType.DaisyChain => "daisy chain",
        LeadType.Reversing => "reversing lead",
        LeadType.Series => "series lead",
        _ => "parallel lead",
    };

    /// <summary>So many alike: "2 reversing leads", "1 daisy chain with 5 plugs", "1 straight lead with a 5.5x2.5 plug".</summary>
    /// <param name="lead">One of them.</param>
    /// <param name="count">How many, at least one; the lead's own count does not matter.</param>
    public static string Counted(Lead lead, int count)
    {
        var plugs = (lead.Plugs, lead.Plug) switch
        {
            ( > 1, { } plug) => $" with {lead.Plugs} plugs {plug.Name}",
            ( > 1, null) => $" with {lead.Plugs} plugs",
            (_, { } plug) => $" with a {plug.Name} plug",
            _ => "",
        };
        return $"{count} {Of(lead.Type)}{(count == 1 ? "" : "s")}{(count > 1 && plugs.Length > 0 ? $", each{plugs}" : plugs)}";
    }
}
