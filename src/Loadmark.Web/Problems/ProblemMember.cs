namespace Loadmark.Web.Problems;

/// <summary>The names of the members that every problem has: four of RFC 9457, section 3.1, and the request's id.</summary>
public static class ProblemMember
{
    /// <summary>The problem's kind, as an address that explains it.</summary>
    public const string Kind = "type";

    /// <summary>The kind in words.</summary>
    public const string Title = "title";

    /// <summary>The HTTP status.</summary>
    public const string Status = "status";

    /// <summary>What is wrong this time.</summary>
    public const string Detail = "detail";

    /// <summary>The request's id.</summary>
    public const string Id = "id";
}
