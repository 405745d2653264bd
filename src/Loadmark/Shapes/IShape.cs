namespace Loadmark.Shapes;

/// <summary>What is told of an object of JSON, or of a list of them, to whoever reads it.</summary>
internal interface IShape
{
    /// <summary>The name that the shape is referred to by; empty where it is described in the place where it stands.</summary>
    string Name { get; }

    /// <summary>What the shape is, in a sentence.</summary>
    string About { get; }

    /// <summary>The shape's members in the order in which they are written.</summary>
    IReadOnlyList<MemberDescription> Members { get; }
}
