namespace Loadmark.Planning.Buying;

/// <summary>What is known of a choice of supplies.</summary>
public enum BuyStatus
{
    /// <summary>Everything can be fed, and nothing cheaper can do it: proven.</summary>
    Optimal,

    /// <summary>Everything can be fed; whether something cheaper can do it was not proven within the time.</summary>
    Feasible,

    /// <summary>Nothing on the list feeds everything, which is proven.</summary>
    Infeasible,

    /// <summary>Neither a combination that feeds everything nor a proof that there is none was found within the time.</summary>
    Unknown,
}
